package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.document.Type;

class HostileFileTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          ``                         ~ $: is empty
          `  `                       ~ $: is empty
          {                          ~ $: is not JSON at line 1
          {"longlow": 1,}            ~ $: is not JSON at line 1, column 15
          {"longlow": NaN}           ~ NaN and Infinity are not numbers
          {"longlow": 1} x           ~ $: is not JSON at line 1
          {"longlow": 1}{}           ~ goes on after its end
          // no                      ~ $: is not JSON at line 1
          {'longlow': 1}             ~ $: is not JSON at line 1
          [1]                        ~ $ = [...]: must be an object
          []                         ~ $ = []: must be an object
          "text"                     ~ $ = "text": must be an object
          null                       ~ $ = null: must be an object
          7                          ~ $ = 7: must be an object
          {"longlow": 1, "longlow": 1} ~ $.longlow: is written twice
          {"longlow": 1e99999}       ~ $.longlow = 1e99999: is beyond the range of numbers
          """)
  void wrongTextIsRefusedWithItsPlace(String text, String words) {
    assertThat(Plank.lines(LayoutReader.read(text, null))).contains(words);
  }

  @Test
  void depthIsBounded() {
    String text = "[".repeat(100_000);
    assertThat(Plank.lines(LayoutReader.read(text, null)))
        .isEqualTo(
            "$: goes past a limit of the reader: nesting 40, text 100000 characters; write it flatter or shorter");
  }

  @Test
  void sizeIsBounded() {
    String text = " ".repeat(Json.MAX_CHARS + 1);
    assertThat(Plank.lines(LayoutReader.read(text, null))).contains("at most 4000000 are read");
  }

  @Test
  void countIsBounded() {
    String pins =
        IntStream.range(0, Type.MAX_ENTRIES + 1)
            .mapToObj(i -> "\"p" + i + "\":[1,2]")
            .collect(Collectors.joining(","));
    String text = "{\"longlow\":1,\"name\":\"x\",\"pins\":{" + pins + "}}";
    assertThat(Plank.lines(LayoutReader.read(text, null)))
        .contains("$.pins: has 2001 entries, takes at most 2000");
    String values = "[" + "1,".repeat(Json.MAX_VALUES) + "1]";
    assertThat(Plank.lines(LayoutReader.read(values, null))).contains("more than 200000 values");
  }

  @Test
  void manyFaultsAreCutShort() {
    String bad =
        IntStream.range(0, 1000)
            .mapToObj(i -> "\"k" + i + "\":1")
            .collect(Collectors.joining(",", "{", "}"));
    assertThat(Plank.faults(bad)).hasSize(Faults.MOST + 1);
    assertThat(Plank.faults(bad).get(Faults.MOST).message()).contains("more faults");
  }

  @Test
  void longChainOfMeasuresIsRefusedAndAShortOneRead() {
    assertThat(Plank.faults(chain(99, "m%d + 1 mm"))).isEmpty();
    assertThat(Plank.faults(chain(1500, "m%d + 1 mm")))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.message()).contains("chain of more than 100 measures"));
  }

  @Test
  void measuresThatGrowWithoutBoundAreRefused() {
    String text =
        chain(40, "hypot(m%1$d, m%1$d)").replace("\"1 mm\"", "{\"is\":\"1 mm\",\"free\":true}");
    assertThat(Plank.faults(text))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.message()).contains("more than 1000 terms"));
  }

  /** Returns plank with measures m0 to m(length), each made from the one before. */
  private static String chain(int length, String step) {
    StringBuilder measures = new StringBuilder("\"m0\":\"1 mm\"");
    for (int i = 1; i <= length; i++) {
      measures.insert(0, "\"m" + i + "\":\"" + String.format(Locale.ROOT, step, i - 1) + "\",");
    }
    return Plank.with("\"wheelbase\": \"1640 mm\"", measures + ", \"wheelbase\": \"1640 mm\"");
  }

  @Test
  void missingFileFolderAndBinaryAreRefused() throws IOException {
    assertThat(Plank.lines(LayoutReader.read(folder.resolve("none.json"))))
        .isEqualTo("$ = \"none.json\": does not exist; look at the name and the folder");
    assertThat(Plank.lines(LayoutReader.read(folder))).contains("is a folder, not a file");
    Path binary = Files.write(folder.resolve("b.json"), new byte[] {(byte) 0xff, 0, (byte) 0xc3});
    assertThat(Plank.lines(LayoutReader.read(binary))).contains("is not UTF-8 text");
    Path utf8 = Files.writeString(folder.resolve("c.json"), "\uFEFF" + Plank.text());
    assertThat(LayoutReader.read(utf8)).isInstanceOf(ReadResult.Read.class);
  }

  @Test
  void endlessDeviceIsRefused() {
    Path zero = Path.of("/dev/zero");
    assumeTrue(Files.exists(zero), "needs /dev/zero");
    assertThat(Plank.lines(LayoutReader.read(zero)))
        .contains("no ordinary file but a pipe or a device");
  }

  @Test
  void bytesAreBounded() throws IOException {
    Path large = folder.resolve("large.json");
    try (var file = new java.io.RandomAccessFile(large.toFile(), "rw")) {
      file.setLength(16_000_001);
    }
    assertThat(Plank.lines(LayoutReader.read(large))).contains("is longer than 16000000 bytes");
  }

  @Test
  void controlCharactersDoNotReachTheTerminal() {
    String line = Plank.lines(LayoutReader.read("{\"a\\u001b[31m\\nb\":\"\\u001b\\n\"}", null));
    assertThat(line.replace("\n", "").chars().filter(Character::isISOControl)).isEmpty();
  }

  @Test
  void localeDoesNotMatter() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      String written = LayoutWriter.toJson(Plank.layout());
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertThat(LayoutWriter.toJson(Plank.layout())).isEqualTo(written);
    } finally {
      Locale.setDefault(before);
    }
  }

  static LongStream seeds() {
    return LongStream.range(0, Boolean.getBoolean("longlow.long") ? 40 : 10);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void spoiltTextNeverThrows(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String plank = Plank.text();
    String spice = "{}[]\",:0 -+*/^().eEmNaI\u0000\n\\\u00e9\uD83D";
    for (int i = 0; i < 40; i++) {
      StringBuilder text = new StringBuilder(plank);
      for (int n = 1 + random.nextInt(4); n > 0; n--) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(3)) {
          case 0 -> text.deleteCharAt(at);
          case 1 -> text.setCharAt(at, spice.charAt(random.nextInt(spice.length())));
          default -> text.insert(at, spice.charAt(random.nextInt(spice.length())));
        }
      }
      ReadResult result = LayoutReader.read(text.toString(), null);
      if (result instanceof ReadResult.Refused refused) {
        assertThat(refused.faults()).isNotEmpty().allSatisfy(HostileFileTest::isClear);
      } else {
        assertThat(Plank.layout(LayoutWriter.toJson(((ReadResult.Read) result).layout())))
            .isEqualTo(((ReadResult.Read) result).layout());
      }
    }
  }

  private static void isClear(Fault fault) {
    assertThat(fault.path()).startsWith("$");
    assertThat(fault.message()).isNotBlank();
    assertThat(fault.line()).doesNotContain("\n", "Exception", "org.longlow", "null:");
    assertThat(fault.line().getBytes(StandardCharsets.UTF_8).length).isLessThan(2500);
  }
}
