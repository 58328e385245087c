package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;

/** On wheels that do not sink, 10 kg more or less change only what rests on masses. */
class MassesAloneTest {

  private static final Set<String> SPRUNG = Set.of("front", "swingarm");

  @TempDir Path folder;

  private Map<Boolean, Map<String, String>> told(JsonNode file) {
    ReadResult read = LayoutReader.read(file.toString(), folder);
    assertThat(read).as(String.valueOf(read)).isInstanceOf(ReadResult.Read.class);
    Map<Boolean, Map<String, String>> told = Map.of(true, new TreeMap<>(), false, new TreeMap<>());
    for (Finding f : Study.of(((ReadResult.Read) read).layout()).findings()) {
      told.get(f.kind().weighed()).put(f.id(), f.verdict() + " " + f.value() + " " + f.text());
    }
    return told;
  }

  @ParameterizedTest
  @CsvSource({"dunlin, battery, + 10 kg", "curlew, engine, - 10 kg"})
  void onlyWhatRestsOnMassesChanges(String name, String part, String more) throws IOException {
    Demos.copy(name, folder);
    JsonNode file = new ObjectMapper().readTree(folder.resolve(name + ".json").toFile());
    for (JsonNode p : file.get("parts")) {
      if (SPRUNG.contains(p.get("kind").asText())) {
        ((ObjectNode) p).put("bump", "0 mm").put("droop", "0 mm");
      }
    }
    Map<Boolean, Map<String, String>> before = told(file);
    ObjectNode weighed = (ObjectNode) file.get("parts").get(part);
    weighed.put("mass", weighed.get("mass").asText() + more);
    Map<Boolean, Map<String, String>> after = told(file);
    assertThat(after.get(false)).hasSizeGreaterThan(50).isEqualTo(before.get(false));
    assertThat(after.get(true).get("load.unladen"))
        .isNotEqualTo(before.get(true).get("load.unladen"));
    assertThat(after.get(true).get("balance.balance"))
        .isNotEqualTo(before.get(true).get("balance.balance"));
  }
}
