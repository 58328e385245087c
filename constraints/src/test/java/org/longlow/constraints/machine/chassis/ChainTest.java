package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainTest {

  // ISO 606 formula and the arc-and-tangent length worked apart; printed to 1e-9.
  @ParameterizedTest
  @CsvSource({
    "600, 15.875, 15, 42, 104.579125094913, 104.579650054207, 106, 611.350193686",
    "560, 15.875, 16, 39, 98.431039421595, 98.431378705351, 100, 572.519557774",
    "520, 12.70, 14, 44, 111.446543168485, 111.447172629551, 112, 523.538345970"
  })
  void linksAndCentreMatchWorkedFigures(
      double c, double p, int z1, int z2, double exact, double polygon, int links, double even) {
    Chain chain = Chain.over(z2, z1, p);
    assertThat(chain.exactLinks(c)).isCloseTo(exact, within(1e-9));
    assertThat(chain.polygonLinks(c)).isCloseTo(polygon, within(1e-9));
    assertThat(chain.links(c)).isEqualTo(links);
    assertThat(chain.centreMm(links)).isCloseTo(even, within(1e-8));
  }

  @Test
  void centreInvertsLinks() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 500; i++) {
      Chain chain = Chain.over(random.nextInt(10, 20), random.nextInt(30, 60), 15.875);
      double c = random.nextDouble(2 * chain.leastCentreMm(), 900);
      int links = chain.links(c);
      assertThat(links % 2).isZero();
      assertThat(links).isGreaterThanOrEqualTo((int) chain.exactLinks(c));
      assertThat(chain.exactLinks(chain.centreMm(links))).isCloseTo(links, within(1e-9));
      assertThat(chain.links(chain.centreMm(links))).isEqualTo(links);
      // The formula's own error against arc and tangent, sprockets a diameter apart or more.
      assertThat(chain.exactLinks(c)).isCloseTo(chain.polygonLinks(c), within(0.05));
    }
  }

  @Test
  void equalSprocketsNeedTwoRunsAndOneWrap() {
    assertThat(Chain.over(20, 20, 10).exactLinks(300)).isCloseTo(80, within(1e-12));
    assertThat(Chain.over(20, 20, 10).links(300)).isEqualTo(80);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> Chain.over(0, 40, 15.875)).hasMessageContaining("teeth");
    assertThatThrownBy(() -> Chain.over(15, 400, 15.875)).hasMessageContaining("teeth");
    assertThatThrownBy(() -> Chain.over(15, 40, Double.NaN)).hasMessageContaining("pitch");
    assertThatThrownBy(() -> Chain.over(15, 42, 15.875).exactLinks(100))
        .hasMessageContaining("just apart");
    assertThatThrownBy(() -> Chain.over(15, 42, 15.875).centreMm(20))
        .hasMessageContaining("go round");
  }
}
