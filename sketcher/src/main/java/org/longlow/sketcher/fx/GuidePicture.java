package org.longlow.sketcher.fx;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.Shape;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Scale;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.longlow.sketcher.guide.Guide;

/**
 * A drawing of the guide on white paper, as wide as there is room: an SVG file of this program,
 * which holds paths and words and nothing else that is seen.
 */
final class GuidePicture extends Region {

  private final Group drawn = new Group();
  private final Scale scale = new Scale();
  private double wide;
  private double high;

  /**
   * @param file its name beside the pages
   */
  GuidePicture(String file) {
    XMLInputFactory factory = XMLInputFactory.newInstance();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    try (InputStream in = Guide.open(file)) {
      XMLStreamReader svg = factory.createXMLStreamReader(in);
      while (svg.hasNext()) {
        if (svg.next() == XMLStreamReader.START_ELEMENT) {
          take(svg);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(file + " is no drawing", e);
    }
    drawn.getTransforms().add(scale);
    drawn.setManaged(false);
    drawn.setMouseTransparent(true);
    getChildren().add(drawn);
    getStyleClass().add("guide-picture");
    setFocusTraversable(true);
  }

  private void take(XMLStreamReader svg) throws XMLStreamException {
    switch (svg.getLocalName()) {
      case "svg" -> {
        double[] box = numbers(attribute(svg, "viewBox").orElseThrow());
        wide = box[2];
        high = box[3];
        drawn.getChildren().add(new Rectangle(box[0], box[1], wide, high));
        ((Rectangle) drawn.getChildren().get(0)).setFill(Color.WHITE);
        scale.setPivotX(box[0]);
        scale.setPivotY(box[1]);
      }
      case "path" -> drawn.getChildren().add(path(svg));
      case "text" -> drawn.getChildren().add(words(svg));
      default -> {
        // groups and their titles
      }
    }
  }

  private static Node path(XMLStreamReader svg) {
    SVGPath path = new SVGPath();
    path.setContent(attribute(svg, "d").orElse(""));
    path.setFillRule(FillRule.EVEN_ODD);
    path.setStrokeLineCap(StrokeLineCap.BUTT);
    path.setStrokeLineJoin(StrokeLineJoin.ROUND);
    paint(svg, path);
    path.setStroke(
        attribute(svg, "stroke").filter(s -> !s.equals("none")).map(Color::web).orElse(null));
    attribute(svg, "stroke-width").map(Double::valueOf).ifPresent(path::setStrokeWidth);
    attribute(svg, "stroke-dasharray")
        .ifPresent(
            dashes -> {
              for (double dash : numbers(dashes)) {
                path.getStrokeDashArray().add(dash);
              }
            });
    return path;
  }

  private static void paint(XMLStreamReader svg, Shape shape) {
    double opacity = attribute(svg, "fill-opacity").map(Double::valueOf).orElse(1.0);
    String fill = attribute(svg, "fill").orElse("black");
    shape.setFill(fill.equals("none") ? null : Color.web(fill, opacity));
  }

  private static Node words(XMLStreamReader svg) throws XMLStreamException {
    Text text = new Text();
    text.setFont(Font.font(DrawingPainter.Letters.FAMILY, number(svg, "font-size")));
    paint(svg, text);
    double x = number(svg, "x");
    double y = number(svg, "y");
    attribute(svg, "transform")
        .map(t -> numbers(t.substring("rotate(".length(), t.length() - 1)))
        .ifPresent(t -> text.getTransforms().add(new Rotate(t[0], t[1], t[2])));
    String anchor = attribute(svg, "text-anchor").orElse("start");
    text.setText(svg.getElementText());
    double across = text.getLayoutBounds().getWidth();
    text.setX(anchor.equals("middle") ? x - across / 2 : anchor.equals("end") ? x - across : x);
    text.setY(y);
    return text;
  }

  private static Optional<String> attribute(XMLStreamReader svg, String name) {
    return Optional.ofNullable(svg.getAttributeValue(null, name));
  }

  private static double number(XMLStreamReader svg, String name) {
    return attribute(svg, name).map(Double::valueOf).orElse(0.0);
  }

  private static double[] numbers(String text) {
    return Stream.of(text.strip().split("[ ,]+")).mapToDouble(Double::parseDouble).toArray();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefWidth(double height) {
    return wide;
  }

  @Override
  protected double computePrefHeight(double width) {
    double frame = snappedLeftInset() + snappedRightInset();
    return ((width < 0 ? wide : width) - frame) / wide * high
        + snappedTopInset()
        + snappedBottomInset();
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double by = (getWidth() - snappedLeftInset() - snappedRightInset()) / wide;
    scale.setX(by);
    scale.setY(by);
    drawn.relocate(snappedLeftInset(), snappedTopInset());
  }
}
