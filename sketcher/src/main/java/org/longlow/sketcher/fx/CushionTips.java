package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.longlow.constraints.seat.CushionAdvice;
import org.longlow.sketcher.desk.AdviceWork;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.LayerEdits;
import org.longlow.sketcher.edit.Target;

/** Asks for the next layer of the cushion on the bench to change, says it, and takes it. */
final class CushionTips extends VBox {

  private final Desk desk;
  private final Supplier<String> cushion;
  private final Label said = Bits.wrapped("", "quiet");
  private final Button take =
      Bits.words("cushion-take-advice", "Take it", "change that layer", this::take);

  CushionTips(Desk desk, Supplier<String> cushion) {
    super(4);
    this.desk = desk;
    this.cushion = cushion;
    Called.by(said, "cushion-advice");
    Button ask =
        Bits.words(
            "cushion-advise",
            "What next?",
            "try each layer of each grade, thicker, thinner and split, and say the best",
            () -> {
              desk.advice().ask(cushion.get());
              refresh();
            });
    Bits.told(ask, "which layer to change next, and what that brings");
    Bits.told(take, "change that layer; it can be undone");
    getChildren().addAll(new FlowPane(5, 5, ask, take), said);
    desk.watch(this::refresh);
    refresh();
  }

  private Optional<CushionAdvice> advice() {
    return desk.advice().found(cushion.get()).flatMap(AdviceWork.Found::advice);
  }

  private void take() {
    advice()
        .ifPresent(
            a ->
                desk.edit(
                    LayerEdits.foam(cushion.get(), a.change(), a.layers()),
                    new Target.OfPart(cushion.get(), List.of("layers"), "layers"),
                    ""));
  }

  private void refresh() {
    Optional<AdviceWork.Found> found = desk.advice().found(cushion.get());
    String words =
        found
            .map(
                f ->
                    !f.done()
                        ? "Trying each layer \u2026"
                        : f.advice()
                            .map(a -> a.words().in(ShownUnits.of(desk)))
                            .orElse(
                                "Nothing to change: it holds for everybody, or no single layer tried"
                                    + " does better."))
            .orElse("");
    said.setText(words);
    said.setVisible(!words.isEmpty());
    said.setManaged(!words.isEmpty());
    take.setVisible(advice().isPresent());
    take.setManaged(advice().isPresent());
  }
}
