package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;

/** Parts on one pin: what the joint excuses and what it does not. */
class JointFindingsTest {

  private static final String ARM =
      "\"depth\": \"55 mm\", \"left\": \"125 mm\", \"right\": \"125 mm\"";

  private static Optional<Finding> finding(String id, String from, String to) throws Exception {
    String text =
        Files.readString(
            Path.of("src/test/resources/org/longlow/constraints/machines/tourer.json"));
    assertThat(text).contains(from);
    ReadResult read = LayoutReader.read(text.replace(from, to), null);
    assertThat(read).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) read).layout()).findings().stream()
        .filter(f -> f.id().equals(id))
        .findFirst();
  }

  /** A square body on the axle, its corners at a distance from there. */
  private static Optional<Finding> onAxle(String kind, int cornerMm) throws Exception {
    String points =
        String.format(
            "[[\"%1$d mm\", \"0 mm\"], [\"0 mm\", \"%1$d mm\"], [\"-%1$d mm\", \"0 mm\"], [\"0 mm\","
                + " \"-%1$d mm\"]]",
            cornerMm);
    return finding(
        "joint.hub.rearWheel",
        "\"swingarm\": {",
        "\"hub\": {\"kind\": \""
            + kind
            + "\", \"frame\": \"rearAxle\", \"outline\": {\"points\": "
            + points
            + "}, \"left\": \"50 mm\", \"right\": \"50 mm\", \"mass\": \"9 kg\"}, \"swingarm\": {");
  }

  // 17 inch: bead seat at 215.9 mm, inside of the rim at 190.9 mm.
  @Test
  void hubMustBeInsideItsRim() throws Exception {
    assertThat(onAxle("motor", 190)).isEmpty();
    Finding wide = onAxle("motor", 200).orElseThrow();
    assertThat(wide.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(wide.value()).isNegative();
    assertThat(wide.source()).contains("common practice");
  }

  // a plate at the end of the arm does not turn with the rim: 190.9 mm less the 15 mm asked
  @Test
  void whatIsNoHubKeepsItsGapInsideTheRim() throws Exception {
    assertThat(onAxle("block", 190)).isEmpty();
    assertThat(onAxle("bracket", 175)).isEmpty();
    Finding near = onAxle("bracket", 177).orElseThrow();
    assertThat(near.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(near.limit()).isEqualTo(15);
    assertThat(near.source()).contains("common practice");
  }

  // 150 mm of tyre, 15 mm of gap and 15 mm of leg on each side: 105 mm.
  @Test
  void armNeedsRoomForItsLegsBesideTheTyre() throws Exception {
    assertThat(arm("106 mm", "106 mm").orElseThrow().verdict()).isEqualTo(Verdict.PASS);
    assertThat(arm("104 mm", "104 mm").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
    assertThat(arm("104 mm", "125 mm").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
    assertThat(arm("125 mm", "104 mm").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void armInsideTheTyreFails() throws Exception {
    Finding inside = arm("60 mm", "60 mm").orElseThrow();
    assertThat(inside.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(inside.value()).isNegative();
    // on one side, 16 and 14 mm beside the tyre
    assertThat(arm("130 mm", "-91 mm")).isEmpty();
    assertThat(arm("130 mm", "-89 mm").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
  }

  private static Optional<Finding> arm(String left, String right) throws Exception {
    return finding(
        "joint.swingarm.rearWheel",
        ARM,
        "\"depth\": \"55 mm\", \"left\": \"" + left + "\", \"right\": \"" + right + "\"");
  }

  @Test
  void partsOnOnePinOverlapNearItOnly() throws Exception {
    String touches = "\"touches\": [\"back\", \"headRest\", \"rider\"]";
    assertThat(finding("joint.headPost.headRest", touches, touches)).isEmpty();
    Finding post =
        finding("joint.headPost.headRest", touches, "\"touches\": [\"back\", \"rider\"]")
            .orElseThrow();
    assertThat(post.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(post.value()).isGreaterThan(post.limit());
  }
}
