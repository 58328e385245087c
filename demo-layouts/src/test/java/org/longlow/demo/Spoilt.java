package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;

/** A shipped machine with something changed in its file. */
final class Spoilt {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final ObjectNode file;

  Spoilt(String name) {
    try {
      file = (ObjectNode) JSON.readTree(Demos.text(name));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Puts a value, JSON with single quotes, into a table of the file, such as {@code parts}. */
  Spoilt with(String table, String name, String value) {
    try {
      ((ObjectNode) file.get(table)).set(name, JSON.readTree(value.replace('\'', '"')));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(value, e);
    }
    return this;
  }

  /** Adds a pin that stays where it is, mm. */
  Spoilt pin(String name, double xMm, double zMm) {
    return with("pins", name, "{'at': ['" + xMm + " mm', '" + zMm + " mm'], 'nailed': true}");
  }

  /** Changes a field of a part. */
  Spoilt part(String name, String field, String value) {
    try {
      ((ObjectNode) file.get("parts").get(name))
          .set(field, JSON.readTree(value.replace('\'', '"')));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(value, e);
    }
    return this;
  }

  /** Takes fields from a part. */
  Spoilt without(String part, String... fields) {
    ((ObjectNode) file.get("parts").get(part)).remove(List.of(fields));
    return this;
  }

  /** Takes parts from the machine, also from what others touch. */
  Spoilt lacking(String... parts) {
    for (String part : parts) {
      ((ObjectNode) file.get("parts")).remove(part);
    }
    file.get("parts")
        .forEach(
            p -> {
              if (p.has("touches")) {
                for (int i = p.get("touches").size() - 1; i >= 0; i--) {
                  if (List.of(parts).contains(p.get("touches").get(i).asText())) {
                    ((ArrayNode) p.get("touches")).remove(i);
                  }
                }
              }
            });
    return this;
  }

  Layout layout() {
    ReadResult read = LayoutReader.read(file.toString(), null);
    assertThat(read).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) read).layout();
  }

  Study study() {
    return Study.of(layout());
  }

  List<Finding> findings() {
    return study().findings();
  }

  Optional<Finding> finding(String id) {
    return findings().stream().filter(f -> f.id().equals(id)).findFirst();
  }
}
