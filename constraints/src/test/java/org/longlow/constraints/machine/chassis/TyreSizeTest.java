package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullAndEmptySource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.machine.chassis.TyreSize.Construction;

class TyreSizeTest {

  private static TyreSize size(String text) {
    TyreSize.Reading reading = TyreSizeReader.read(text);
    assertThat(reading.faults()).isEmpty();
    return reading.size();
  }

  // Arithmetic of ISO 5751 / UN R75 sizes, computed apart in double precision; 1e-9 is rounding.
  @ParameterizedTest
  @CsvSource({
    "120/70 R17, 84.0, 599.8, 299.9",
    "180/55 R17, 99.0, 629.8, 314.9",
    "200/55 R17, 110.0, 651.8, 325.9",
    "130/80-17, 104.0, 639.8, 319.9",
    "130/90-16, 117.0, 640.4, 320.2",
    "MT90-16, 117.0, 640.4, 320.2",
    "100/90-19, 90.0, 662.6, 331.3",
    "90/90-21, 81.0, 695.4, 347.7"
  })
  void nominalDimensionsFollowTheSize(String size, double height, double diameter, double radius) {
    TyreSize read = size(size);
    assertThat(read.sectionHeightMm()).isCloseTo(height, within(1e-9));
    assertThat(read.diameterMm()).isCloseTo(diameter, within(1e-9));
    assertThat(read.freeRadiusMm()).isCloseTo(radius, within(1e-9));
    assertThat(read.sectionRadiusMm()).isEqualTo(read.widthMm() / 2);
  }

  @ParameterizedTest
  @CsvSource({
    "'180/55ZR17 M/C 73W', '180/55 ZR17', RADIAL, 314.9",
    "'180/55 ZR 17 M/C (73W) TL', '180/55 ZR17', RADIAL, 314.9",
    "'  120/70r17m/c 58w', '120/70 R17', RADIAL, 299.9",
    "'130/90B16', '130/90 B16', BIAS_BELTED, 320.2",
    "'130/90 - 16 67H', '130/90-16', DIAGONAL, 320.2",
    "'130/90 16', '130/90-16', DIAGONAL, 320.2",
    "'MT90B16', 'MT90B16', BIAS_BELTED, 320.2",
    "'mt90 b 16 74h', 'MT90B16', BIAS_BELTED, 320.2",
    "'MT90HB16', 'MT90HB16', BIAS_BELTED, 320.2",
    "'130/90H16', '130/90 H16', DIAGONAL, 320.2"
  })
  void sidewallSpellingsAreUnderstood(
      String text, String name, Construction construction, double radius) {
    TyreSize read = size(text);
    assertThat(read.designation()).isEqualTo(name);
    assertThat(read.construction()).isEqualTo(construction);
    assertThat(read.freeRadiusMm()).isCloseTo(radius, within(1e-9));
  }

  // Widths of a retailer's published conversion chart of alphabetic sizes; whole millimetres.
  @ParameterizedTest
  @CsvSource({
    "MH90-21, 80",
    "MJ90-19, 90",
    "MM90-19, 100",
    "MN90-18, 110",
    "MP85-16, 120",
    "MR90-18, 120",
    "MT90-16, 130",
    "MU90-16, 140",
    "MV85-15, 150"
  })
  void widthLettersFollowTheChartAndAreMarkedNearEquivalents(String size, double width) {
    TyreSize read = size(size);
    assertThat(read.widthMm()).isEqualTo(width);
    assertThat(read.nearEquivalent()).isTrue();
    assertThat(read.tyre().nearEquivalent()).isTrue();
  }

  // Rule D = 25.4 code + 2·0.88·S on widths remembered from UN R75 annex 5, one printed decimal.
  @ParameterizedTest
  @CsvSource({
    "2.75-18, 75, 589.2, 587", "3.00-18, 80, 598.0, 599", "3.25-19, 89, 639.2, 638",
    "3.50-18, 93, 620.9, 623", "4.00-18, 108, 647.3, 643", "3.00-21, 80, 674.2, 675"
  })
  void inchSizesFollowTheRuleWithinFiveMillimetresOfTheTable(
      String size, double width, double rule, double remembered) {
    TyreSize read = size(size);
    assertThat(read.widthMm()).isEqualTo(width);
    assertThat(read.diameterMm()).isCloseTo(rule, within(0.05));
    assertThat(read.diameterMm()).isCloseTo(remembered, within(5.0));
    assertThat(read.nearEquivalent()).isTrue();
  }

  @Test
  void otherInchWidthsStayNearTheirName() {
    // 5.00-16 is sold as the near equivalent of 130/90-16 (D 640); 10 mm is the looseness of that.
    assertThat(size("5.00-16").diameterMm()).isCloseTo(640, within(10.0));
    assertThat(size("5.10-18").widthMm()).isCloseTo(129.54, within(1e-9));
  }

  @Test
  void metricSizesAreTheirOwn() {
    assertThat(size("120/70 R17").nearEquivalent()).isFalse();
  }

  @ParameterizedTest
  @NullAndEmptySource
  @ValueSource(
      strings = {
        "   ",
        "wide",
        "120",
        "120/70",
        "120/70 R",
        "120//70 R17",
        "-120/70 R17",
        "120/70 R17 banana",
        "NaN/70 R17",
        "1e9/70 R17",
        "MZ90-16",
        "3.50",
        "0.00-18",
        "99.99-18",
        "120/70 R99",
        "120/999 R17",
        "0/0 R0",
        "120/70 R99999999999999999999",
        "1111111111111111111111111111111111111111111111111111111111111111111111111111/70 R17"
      })
  void nonsenseIsRefusedWithAReason(String text) {
    TyreSize.Reading reading = TyreSizeReader.read(text);
    assertThat(reading.size()).isNull();
    assertThat(reading.faults()).isNotEmpty().allSatisfy(f -> assertThat(f).isNotBlank());
  }

  @Test
  void everyFaultOfASizeComesAtOnce() {
    assertThat(TyreSizeReader.read("12/700 R99").faults())
        .hasSize(3)
        .anySatisfy(f -> assertThat(f).contains("section width mm is 12"))
        .anySatisfy(f -> assertThat(f).contains("aspect ratio is 700"))
        .anySatisfy(f -> assertThat(f).contains("rim code is 99"));
  }
}
