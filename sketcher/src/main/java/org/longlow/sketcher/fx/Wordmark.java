package org.longlow.sketcher.fx;

import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.text.Text;

/** The name as a mark: two wheels far apart on one ground line, and what goes between them. */
final class Wordmark extends Pane {

  Wordmark() {
    getStyleClass().add("wordmark");
    setMinSize(330, 64);
    setPrefSize(330, 64);
    setMaxSize(330, 64);
    Line ground = new Line(0, 58, 330, 58);
    Circle rear = new Circle(24, 42, 16);
    Circle front = new Circle(306, 42, 16);
    Polyline low = new Polyline(24, 42, 62, 48, 236, 48, 282, 18, 306, 42);
    ground.getStyleClass().add("mark-line");
    rear.getStyleClass().add("mark-line");
    front.getStyleClass().add("mark-line");
    low.getStyleClass().add("mark-line");
    Text name = new Text(66, 40, "longlow");
    name.getStyleClass().add("mark-name");
    name.setStyle("-fx-font-size: 25px"); // part of the mark, which does not grow
    getChildren().addAll(ground, low, rear, front, name);
  }
}
