package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** One small machine must look as it did; look at the new picture before you replace the old. */
class GoldenElevationTest {

  private static final String SMALL =
      """
      {"longlow": 1, "name": "wren", "title": "Wren",
       "measures": {"base": "1400 mm"},
       "pins": {"rear": {"at": ["0 mm", "300 mm"], "nailed": true},
                "front": {"at": ["base", "300 mm"], "nailed": true},
                "top": ["1150 mm", "800 mm"], "bottom": ["1230 mm", "640 mm"],
                "a": ["300 mm", "500 mm"], "b": ["700 mm", "450 mm"], "c": ["1150 mm", "720 mm"]},
       "parts": {
        "rearWheel": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": "300 mm",
                      "width": "100 mm", "mass": "12 kg", "material": "rubber"},
        "frontWheel": {"kind": "wheel", "end": "front", "axle": "front", "radius": "300 mm",
                       "width": "90 mm", "mass": "11 kg", "material": "rubber"},
        "fork": {"kind": "front", "type": "telescopic", "top": "top", "bottom": "bottom",
                 "axle": "front", "tube": "36 mm", "y": "90 mm", "bump": "60 mm",
                 "droop": "30 mm", "mass": "10 kg"},
        "rail": {"kind": "rail", "path": ["a", "b", "c"], "diameter": "32 mm", "wall": "2 mm",
                 "bendRadius": "100 mm", "y": "150 mm", "both": true, "material": "steel"}}}
      """;

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  /** Coordinates are written to 0.001 mm; rounding may go either way. */
  private static final double TOLERANCE = 0.0021;

  private static byte[] svg() throws IOException {
    ReadResult read = LayoutReader.read(SMALL, Path.of("."));
    Study study = Study.of(((ReadResult.Read) read).layout());
    PictureOptions options =
        PictureOptions.PLAIN
            .withStance(Optional.of(Condition.empty(Stance.Kind.UNLADEN)))
            .withDimensions(true)
            .withPins(true);
    Page page = Page.round(ElevationPicture.of(study, options).scaled(0.1), 5);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page, Palette.CARD, out);
    return out.toByteArray();
  }

  /** Writes the picture anew to the file named. */
  public static void main(String[] args) throws IOException {
    Files.write(Path.of(args[0]), svg());
  }

  @Test
  void theSmallMachineLooksAsItDid() throws Exception {
    try (InputStream golden = GoldenElevationTest.class.getResourceAsStream("wren.svg")) {
      same(golden.readAllBytes(), svg());
    }
  }

  /** Two pictures have the same elements at the same places. */
  static void same(byte[] golden, byte[] now) throws Exception {
    same("/", root(golden), root(now));
  }

  private static Element root(byte[] xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml)).getDocumentElement();
  }

  private static void same(String where, Element a, Element b) {
    String here = where + "/" + a.getTagName();
    assertThat(b.getTagName()).as(here).isEqualTo(a.getTagName());
    NamedNodeMap attributes = a.getAttributes();
    assertThat(b.getAttributes().getLength()).as(here).isEqualTo(attributes.getLength());
    for (int i = 0; i < attributes.getLength(); i++) {
      Node attribute = attributes.item(i);
      sameText(
          here + "@" + attribute.getNodeName(),
          attribute.getNodeValue(),
          b.getAttribute(attribute.getNodeName()));
    }
    List<Element> as = children(a);
    List<Element> bs = children(b);
    assertThat(bs).as(here).hasSameSizeAs(as);
    if (as.isEmpty()) {
      assertThat(b.getTextContent()).as(here).isEqualTo(a.getTextContent());
    }
    for (int i = 0; i < as.size(); i++) {
      same(here + "[" + i + "]", as.get(i), bs.get(i));
    }
  }

  private static void sameText(String where, String a, String b) {
    assertThat(NUMBER.matcher(b).replaceAll("#"))
        .as(where)
        .isEqualTo(NUMBER.matcher(a).replaceAll("#"));
    Matcher x = NUMBER.matcher(a);
    Matcher y = NUMBER.matcher(b);
    while (x.find() && y.find()) {
      assertThat(Double.parseDouble(y.group()))
          .as(where)
          .isCloseTo(Double.parseDouble(x.group()), within(TOLERANCE));
    }
  }

  private static List<Element> children(Element e) {
    List<Element> out = new ArrayList<>();
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        out.add(child);
      }
    }
    return out;
  }
}
