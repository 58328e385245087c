package org.longlow.constraints.study;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/**
 * A whole machine of the tests with something changed in its file: {@link #tourer} for two, on a
 * trailing link, with chain, exhaust and lid; {@link #runabout} for one, on a leading link, with a
 * motor in its hub. Nothing needs care in them but what law and a passenger cannot have.
 */
public final class TestMachine {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Map<String, Study> AS_FILED = new ConcurrentHashMap<>();

  /** Studies of the last changed machines: one test asks for many of their findings. */
  private static final Map<String, Study> LAST =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Study> eldest) {
              return size() > 8;
            }
          });

  /**
   * Parts and people of all machines, each equal one once: a changed machine is to the study what
   * an edited one is, of which most is known. {@code StudiedAgainTest} holds that this changes
   * nothing.
   */
  private static final Map<Object, Object> THINGS = new ConcurrentHashMap<>();

  /** Set where code changes while the tests run: a study kept from before would hide the change. */
  private static final boolean ANEW = Boolean.getBoolean("longlow.studiesAnew");

  private final ObjectNode file;

  private TestMachine(String text) {
    try {
      file = (ObjectNode) JSON.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  public static TestMachine tourer() {
    return named("tourer");
  }

  public static TestMachine runabout() {
    return named("runabout");
  }

  public static TestMachine named(String name) {
    return new TestMachine(text(name));
  }

  /** The study of a machine as its file has it, made once. */
  public static Study asFiled(String name) {
    return ANEW ? named(name).study() : AS_FILED.computeIfAbsent(name, n -> named(n).study());
  }

  /** The file of a machine after replacing texts, each found exactly once. */
  public static TestMachine replacing(String name, String... replaced) {
    String text = text(name);
    for (int i = 0; i < replaced.length; i += 2) {
      assertThat(text.split(java.util.regex.Pattern.quote(replaced[i]), -1))
          .as(replaced[i])
          .hasSize(2);
      text = text.replace(replaced[i], replaced[i + 1]);
    }
    return new TestMachine(text);
  }

  public static String text(String name) {
    String path = "/org/longlow/constraints/machines/" + name + ".json";
    try (InputStream in = TestMachine.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(path, e);
    }
  }

  /** Puts a value, JSON with single quotes, into a table of the file, such as {@code parts}. */
  public TestMachine with(String table, String name, String value) {
    ((ObjectNode) (file.has(table) ? file.get(table) : file.putObject(table)))
        .set(name, json(value));
    return this;
  }

  /** Adds a pin that stays where it is, mm. */
  public TestMachine pin(String name, double xMm, double zMm) {
    return with("pins", name, "{'at': ['" + xMm + " mm', '" + zMm + " mm'], 'nailed': true}");
  }

  /** Changes a field of a part. */
  public TestMachine part(String name, String field, String value) {
    return field("parts", name, field, value);
  }

  /** Changes a field of an entry of a table. */
  public TestMachine field(String table, String name, String field, String value) {
    assertThat(file.get(table).has(name)).as(name).isTrue();
    ((ObjectNode) file.get(table).get(name)).set(field, json(value));
    return this;
  }

  /** Takes fields from a part. */
  public TestMachine without(String part, String... fields) {
    ((ObjectNode) file.get("parts").get(part)).remove(List.of(fields));
    return this;
  }

  /** Takes parts from the machine, also from what others touch. */
  public TestMachine lacking(String... parts) {
    List<String> gone = Arrays.asList(parts);
    ((ObjectNode) file.get("parts")).remove(gone);
    file.get("parts")
        .forEach(
            p -> {
              if (p.get("touches") instanceof ArrayNode touches) {
                touches.removeIf(t -> gone.contains(t.asText()));
              }
            });
    return this;
  }

  private static com.fasterxml.jackson.databind.JsonNode json(String value) {
    try {
      return JSON.readTree(value.replace('\'', '"'));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(value, e);
    }
  }

  public Layout layout() {
    ReadResult read = LayoutReader.read(file.toString(), null);
    assertThat(read).as(String.valueOf(read)).isInstanceOf(ReadResult.Read.class);
    Layout layout = ((ReadResult.Read) read).layout();
    return ANEW
        ? layout
        : Changed.with(layout, Map.of("parts", same(layout.parts()), "crew", same(layout.crew())));
  }

  private static <V> Map<String, V> same(Map<String, V> all) {
    Map<String, V> same = new LinkedHashMap<>();
    all.forEach((name, thing) -> same.put(name, same(thing)));
    return same;
  }

  @SuppressWarnings("unchecked")
  private static <V> V same(V thing) {
    return (V) THINGS.computeIfAbsent(thing, t -> t);
  }

  public Study study() {
    Study known = ANEW ? null : LAST.get(file.toString());
    if (known == null) {
      known = Study.of(layout());
      LAST.put(file.toString(), known);
    }
    return known;
  }

  public List<Finding> findings() {
    return study().findings();
  }

  public Optional<Finding> finding(String id) {
    return findings().stream().filter(f -> f.id().equals(id)).findFirst();
  }

  public Verdict verdict(String id) {
    return finding(id).orElseThrow().verdict();
  }
}
