package org.longlow.constraints.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.law.LawFinding.Verdict;
import org.longlow.constraints.law.MachineNotices.Facts;
import org.longlow.constraints.law.MachineNotices.HandlebarProfile;
import org.longlow.constraints.law.MachineNotices.Mirror;

class MachineNoticesTest {

  @Test
  void noticesNeverPassOrFail() {
    Facts facts =
        new Facts(900.0, null, List.of(new Mirror("left mirror", 5000, false, 200)), true);
    List<LawFinding> notices = MachineNotices.of(EnumSet.allOf(RuleSet.class), facts);
    assertThat(notices)
        .hasSize(6)
        .allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.CAUTION));
    assertThat(notices)
        .extracting(LawFinding::id)
        .containsExactly(
            "law.us.footrests",
            "law.us.stand",
            "law.us.mirror",
            "law.us.mirror-out",
            "law.us.handlebar",
            "law.uk.stand");
  }

  @Test
  void handlebarHeightIsComparedWithTheProfile() {
    // 15 in above the loaded seat, many US states: 381 mm.
    LawFinding f = handlebar(new Facts(360.0, null, List.of(), false));
    assertThat(f.limit()).isEqualTo(381);
    assertThat(f.margin()).isEqualTo(21);
    assertThat(f.text()).contains("varies by state");
    HandlebarProfile own = new HandlebarProfile("Georgia", 635, "Georgia 40-6-314, checked");
    assertThat(handlebar(new Facts(700.0, own, List.of(), false)).margin()).isEqualTo(-65);
  }

  private static LawFinding handlebar(Facts facts) {
    return MachineNotices.of(Set.of(RuleSet.US_FEDERAL), facts).stream()
        .filter(f -> f.id().equals("law.us.handlebar"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aMachineWithoutMirrorsIsTold() {
    assertThat(
            MachineNotices.of(Set.of(RuleSet.US_FEDERAL), new Facts(null, null, List.of(), false)))
        .extracting(LawFinding::text)
        .anyMatch(t -> t.contains("no mirror"));
    assertThat(MachineNotices.of(Set.of(), new Facts(null, null, List.of(), true))).isEmpty();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Mirror("m", -1, false, 300)).hasMessageContaining("area");
    assertThatThrownBy(() -> new HandlebarProfile("x", Double.NaN, "y"))
        .hasMessageContaining("limit");
  }
}
