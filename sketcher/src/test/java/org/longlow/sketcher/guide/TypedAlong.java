package org.longlow.sketcher.guide;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.longlow.sketcher.cli.Ran;
import org.longlow.svg.write.Seal;

/**
 * Somebody who reads a chapter and does what its boxes say: types what stands in {@code sh}, puts
 * what stands in {@code json FILE} into that file, and looks in the answer for what stands in
 * {@code text}, line by line, in that order. A drawing shown is one that a command of the chapter
 * made, under the name that it has there.
 */
final class TypedAlong {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern ENDS = Pattern.compile("\\s+# ends with (\\d)$");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private static final String DAY = "2026-11-30";

  /** Words that a file or folder follows. */
  private static final List<String> BEFORE_A_FILE = List.of("--out", "--input");

  /** Whether what is tested is changed while tests run, so that nothing may be kept. */
  private static final boolean ANEW = Boolean.getBoolean("longlow.studiesAnew");

  /** What chapters have in common, each typed by the first that has it. */
  private static final Map<List<String>, Told> TOLD = new ConcurrentHashMap<>();

  /**
   * What a command did.
   *
   * @param made the files it left, if it reads none, by where they lie in the folder
   */
  private record Told(int code, String said, Map<String, byte[]> made) {}

  private final Path folder;
  private String answer = "";
  private int commands;
  private int lines;

  TypedAlong(Path folder) {
    this.folder = folder;
  }

  int commands() {
    return commands;
  }

  /** How many lines were found in answers. */
  int lines() {
    return lines;
  }

  void take(GuideBlock.Code box) throws IOException {
    if (box.info().equals("sh")) {
      StringBuilder said = new StringBuilder();
      for (String line : box.lines()) {
        said.append(type(line));
      }
      answer = flat(said.toString());
    } else if (box.info().equals("text")) {
      find(box.lines());
    } else {
      assertThat(box.info()).as("what a box holds").startsWith("json");
      JsonNode change = JSON.readTree(String.join("\n", box.lines()));
      String file = box.info().substring("json".length()).strip();
      if (!file.isEmpty()) {
        put(folder.resolve(file), (ObjectNode) change);
      }
    }
  }

  /** Looks at a drawing of the guide, or accepts what a command of the chapter drew as such. */
  void see(GuideBlock.Picture picture) throws IOException {
    Path shown = GuideFiles.FOLDER.resolve(picture.file());
    byte[] made = undated(Files.readAllBytes(named(shown.getFileName())));
    if (Boolean.getBoolean("golden.update")) {
      Files.write(shown, made);
    }
    assertThat(shown).hasBinaryContent(made);
  }

  private Path named(Path name) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(f -> f.getFileName().equals(name))
          .findFirst()
          .orElseThrow(() -> new AssertionError(name + " is made by no command before it"));
    }
  }

  /** A drawing is of the day on which it is made, that of the guide of one day for ever. */
  private static byte[] undated(byte[] drawing) {
    String text = new String(drawing, StandardCharsets.UTF_8);
    String whole = text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1); // no seal
    return Seal.on(whole.replace(LocalDate.now().toString(), DAY).getBytes(StandardCharsets.UTF_8));
  }

  private String type(String line) throws IOException {
    Matcher ends = ENDS.matcher(line);
    int code = ends.find() ? Integer.parseInt(ends.group(1)) : 0;
    List<String> words = words(ends.replaceFirst(""));
    assertThat(words.remove(0)).as(line).isEqualTo("longlow");
    Told told = told(words);
    assertThat(told.code()).as("%s%n%s", line, told.said()).isEqualTo(code);
    commands++;
    return told.said();
  }

  /** The same words about the same machine are answered once, wherever they are typed. */
  private Told told(List<String> words) throws IOException {
    List<String> key = new ArrayList<>();
    words.forEach(word -> key.add(here(word)));
    Path named = Path.of(words.get(words.size() - 1));
    boolean makes = List.of("new", "demo").contains(words.get(0)) && Files.notExists(named);
    if (words.get(0).equals("check")) {
      key.add(Files.readString(Path.of(words.get(1))));
    }
    if (ANEW || !makes && key.size() == words.size()) {
      return typed(words, folder.resolve("none"));
    }
    Told told = TOLD.get(key);
    if (told == null) {
      told = typed(words, makes ? named : folder.resolve("none"));
      TOLD.put(key, told);
      return told;
    }
    for (Map.Entry<String, byte[]> file : told.made().entrySet()) {
      Path at = folder.resolve(file.getKey());
      Files.createDirectories(at.getParent());
      Files.write(at, file.getValue());
    }
    return told;
  }

  private Told typed(List<String> words, Path named) throws IOException {
    Ran ran = Ran.of(words.toArray());
    Map<String, byte[]> made = new TreeMap<>();
    if (Files.exists(named)) {
      try (Stream<Path> all = Files.walk(named)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          made.put(folder.relativize(file).toString(), Files.readAllBytes(file));
        }
      }
    }
    return new Told(ran.code(), here(ran.said()), made);
  }

  private String here(String text) {
    return text.replace(folder + "/", "");
  }

  private List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher m = WORD.matcher(line);
    String before = "";
    while (m.find()) {
      String word = m.group(1) != null ? m.group(1) : m.group(2);
      boolean file = BEFORE_A_FILE.contains(before) || word.endsWith(".json");
      words.add(file ? folder.resolve(word).toString() : word);
      before = word;
    }
    return words;
  }

  private void find(List<String> expected) {
    int from = 0;
    for (String line : expected) {
      for (String piece : line.split("…")) {
        String wanted = flat(piece);
        int at = answer.indexOf(wanted, from);
        assertThat(at)
            .as("'%s' after what stands before it in the answer: %s", wanted, answer)
            .isNotNegative();
        from = at + wanted.length();
      }
      lines++;
    }
  }

  /** How words are spaced and broken into lines does not matter. */
  private static String flat(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** Puts a change into a file: objects are merged, null takes out, all else replaces. */
  static void put(Path file, ObjectNode change) throws IOException {
    ObjectNode all =
        Files.exists(file)
            ? (ObjectNode) JSON.readTree(Files.readString(file))
            : JSON.createObjectNode();
    merge(all, change);
    Files.writeString(file, JSON.writeValueAsString(all));
  }

  private static void merge(ObjectNode into, ObjectNode change) {
    for (Map.Entry<String, JsonNode> e : change.properties()) {
      if (e.getValue() instanceof ObjectNode inner
          && into.get(e.getKey()) instanceof ObjectNode there) {
        merge(there, inner);
      } else if (e.getValue().isNull()) {
        into.remove(e.getKey());
      } else {
        into.set(e.getKey(), e.getValue());
      }
    }
  }
}
