package org.longlow.constraints.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Sex;

class CrowdTableTest {

  private static MeasuredCrowd crowd(String text) {
    CrowdTable.Read read = CrowdTable.of(text);
    assertThat(read.faults()).isEmpty();
    return read.crowd().orElseThrow();
  }

  @Test
  void peopleAreReadInAnyUnitAndOrder() {
    MeasuredCrowd crowd =
        crowd(
            "\ufeffmass lb,Stature in,sex,name,sittingheight\r\n"
                + "150,64,female,\"Ida, of the \"\"Hut\"\"\",\r\n"
                + "\r\n"
                + "68.5 kg,1702 mm,M,Olaf,35 1/2 in\r\n");
    assertThat(crowd.size()).isEqualTo(2);
    assertThat(crowd.name(0)).isEqualTo("Ida, of the \"Hut\"");
    BodyMeasures ida = crowd.person(0);
    assertThat(ida.sex()).isEqualTo(Sex.FEMALE);
    assertThat(ida.statureMm()).isCloseTo(1625.6, within(1e-9));
    assertThat(ida.massKg()).isCloseTo(150 * 0.45359237, within(1e-9));
    assertThat(ida.measured()).isEmpty();
    BodyMeasures olaf = crowd.person(1);
    assertThat(olaf.sex()).isEqualTo(Sex.MALE);
    assertThat(olaf.statureMm()).isEqualTo(1702);
    assertThat(olaf.get("sittingheight")).isCloseTo(35.5 * 25.4, within(1e-9));
    MeasuredCrowd broken =
        crowd("name,sex,stature,mass\n\"Ida\nof the Hut\",f,1625,68\nB,m,1700,70");
    assertThat(broken.size()).isEqualTo(2);
    assertThat(broken.name(0)).isEqualTo("Ida of the Hut");
    assertThat(crowd("sex;stature;mass\nwoman;1650;62\n").name(0)).isEqualTo("1");
    assertThat(CrowdTable.of("sex\tstature\tmass").faults())
        .containsExactly("there are headings and nobody under them; write a line for each person");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|line 1 is empty; write headings there",
        "'sex,stature\\nfemale,1600'|line 1: there is no column mass",
        "'sex,stature,mass,sitingheight\\n'|did you mean sittingheight?",
        "'sex,stature,mass,mass\\n'|line 1: mass is there twice",
        "'sex,stature kg,mass\\n'|is no unit of stature; use mm, cm or in",
        "'name,sex,stature,mass\\nA,f,1600,60\\n\"B,m,1700,70\\nC,m,1700,70'|line 3: a cell begins with",
        "'sex,stature,mass\\nfemale,1600'|line 2 has 2 values for 3 columns",
        "'sex,stature,mass\\nduck,1600,60'|line 2: sex is \"duck\"; use female or male",
        "'sex,stature,mass\\nfemale,tall,60'|line 2: stature is \"tall\"; write a number of mm",
        "'sex,stature,mass\\nfemale,1600 kg,60'|line 2: stature is \"1600 kg\"",
        "'sex,stature,mass\\nfemale,,60'|line 2: stature is \"\"",
        "'sex,stature,mass\\nfemale,160,60'|line 2: statureMm must be 1200 to 2200 mm, got 160",
        "'sex,stature,mass\\nfemale,1600,6'|line 2: massKg must be 30 to 200 kg, got 6",
        "'name,sex,stature,mass\\nA,f,1600,60\\nA,m,1700,70'|line 3: somebody is called \"A\" already",
      })
  void whatIsWrongIsToldByLineAndValue(String text, String told) {
    CrowdTable.Read read = CrowdTable.of(text.replace("\\n", "\n"));
    assertThat(read.crowd()).isEmpty();
    assertThat(read.faults()).anyMatch(f -> f.contains(told));
  }

  @Test
  void allFaultsAreToldButNotThousands() {
    StringBuilder text = new StringBuilder("sex,stature,mass\n");
    for (int i = 0; i < 500; i++) {
      text.append("?,?,?\n");
    }
    CrowdTable.Read read = CrowdTable.of(text.toString());
    assertThat(read.faults()).hasSize(31);
    assertThat(read.faults().get(30)).isEqualTo("and 1470 more faults");
  }

  /** A file that is no table at all may be one line of millions of letters. */
  @Test
  void noFaultIsAsLongAsTheFile() {
    String much = "x".repeat(100_000);
    for (String text :
        new String[] {much, "sex,stature,mass\n" + much + "," + much + "," + much + "\n"}) {
      assertThat(CrowdTable.of(text).faults())
          .isNotEmpty()
          .allSatisfy(f -> assertThat(f.length()).isLessThan(500));
    }
  }
}
