package org.longlow.sketcher.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.start.Answers;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Shipped;

/**
 * What decides a verdict and is known from memory lets nothing pass, on any machine we give away.
 */
class MemoryNeverPassesTest {

  @Test
  void noFindingPassesByWhatIsFromMemory() {
    FirstMachine.Made first = (FirstMachine.Made) FirstMachine.of(Answers.NONE);
    List<Finding> all =
        Stream.concat(Shipped.studies(), Stream.of(first.study()))
            .flatMap(s -> s.findings().stream())
            .toList();
    assertThat(all).anyMatch(f -> f.basis().stream().anyMatch(Basis::decidesFromMemory));
    assertThat(all)
        .filteredOn(f -> f.verdict() == Verdict.PASS)
        .noneMatch(f -> f.basis().stream().anyMatch(Basis::decidesFromMemory))
        .hasSizeGreaterThan(50);
    // a source that says so in words is of that status too
    assertThat(all)
        .flatExtracting(Finding::basis)
        .filteredOn(b -> b.words().in(Units.MM).contains("from memory"))
        .allMatch(b -> b.known() == Known.FROM_MEMORY);
    // what is beside the point is so on purpose
    assertThat(all)
        .filteredOn(f -> f.basis().stream().anyMatch(b -> !b.decides()))
        .extracting(f -> f.kind().word())
        .isSubsetOf(
            "load",
            "posture",
            "pedal",
            "shut",
            "effort",
            "rise",
            "seeing-neck",
            "bend",
            // a remembered grip, where the tyres hold what is asked with room to spare
            "brace",
            "dive",
            // the form of the foam model; how far it is out is said beside each figure
            "sink");
  }
}
