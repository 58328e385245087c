package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.mend.Offer;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Mends;
import org.longlow.sketcher.edit.LampSet;

/**
 * What mends the finding that is opened out above: a word that asks, then the offers, each shown on
 * the card while the pointer is over it or the keyboard on it.
 */
final class MendPane extends VBox {

  private final Desk desk;
  private final Button ask;
  private final Button lamps;
  private final Label state = Bits.wrapped("", "finding-detail");
  private final Map<Offer, Button> buttons = new LinkedHashMap<>();
  private String finding = "";
  private boolean focusFirst;
  private boolean lacksLamp;

  MendPane(Desk desk) {
    super(3);
    this.desk = desk;
    ask =
        Bits.words(
            "mend",
            "",
            "look for the smallest single changes that mend this",
            () -> desk.mending().ask(finding));
    Bits.keyed(ask, "M");
    ask.setWrapText(true);
    ask.setMinWidth(0);
    ask.setMinHeight(USE_PREF_SIZE);
    lamps =
        Bits.words(
            "mend-lamps",
            "add " + LampSet.TITLE,
            "adds each that is lacking, where it has room",
            () -> Adds.addLamps(desk));
    lamps.setWrapText(true);
    lamps.setMinWidth(0);
    lamps.setMinHeight(USE_PREF_SIZE);
    Called.by(state, "mend-state");
    getStyleClass().add("mend");
  }

  /** Asks, and puts the keyboard on the first offer when all are there. */
  void begin() {
    if (lacksLamp) {
      lamps.requestFocus();
    } else if (isVisible()) {
      focusFirst = true;
      if (mends().isEmpty()) {
        desk.mending().ask(finding);
      }
      fill();
    }
  }

  private Optional<Mends> mends() {
    return desk.mending().mends().filter(m -> m.finding().equals(finding));
  }

  /** Shows what there is to say of the finding picked, or nothing where none can be mended. */
  void refresh(Optional<Finding> picked) {
    if (desk.mending().tried().isEmpty()) {
      Optional<Finding> now = picked.filter(desk.mending()::isMendable);
      String id = now.map(Finding::id).orElse("");
      focusFirst &= id.equals(finding);
      finding = id;
      lacksLamp = now.filter(LampSet::isAsked).isPresent();
      now.ifPresent(f -> ask.setText("mend " + f.subject() + "\u2026"));
      setVisible(now.isPresent());
      setManaged(now.isPresent());
    }
    fill();
  }

  private void fill() {
    Optional<Mends> mends = mends();
    List<Offer> offers = mends.map(m -> m.listed(buttons.keySet())).orElse(List.of());
    buttons.keySet().retainAll(offers);
    List<Node> rows = new ArrayList<>();
    if (lacksLamp) {
      rows.add(lamps); // no change of what is there makes up for what is not
    } else if (mends.isEmpty()) {
      rows.add(ask);
    } else {
      for (Offer offer : offers) {
        Button button = buttons.computeIfAbsent(offer, this::button);
        Called.by(button, "offer-" + rows.size());
        rows.add(button);
      }
      state.setText(said(mends.get()));
      rows.add(state);
    }
    if (!rows.equals(getChildren())) {
      getChildren().setAll(rows);
    }
    if (focusFirst && !offers.isEmpty() && mends.filter(m -> !m.looking()).isPresent()) {
      focusFirst = false;
      buttons.get(offers.get(0)).requestFocus();
      Reveal.later(buttons.get(offers.get(0)));
    }
  }

  private static String said(Mends mends) {
    if (mends.looking()) {
      return "looking\u2026";
    }
    return mends.offers().isEmpty()
        ? "No single change was found that mends this."
        : "Each was tried on the whole machine as drawn. Look at it before you cut.";
  }

  private Button button(Offer offer) {
    Button button = Bits.words("offer", offer.says(), offer.says(), () -> take(offer));
    button.getStyleClass().add("offer");
    button.setWrapText(true);
    button.setMinWidth(0);
    button.setMinHeight(USE_PREF_SIZE);
    button.setMaxWidth(Double.MAX_VALUE);
    button.hoverProperty().addListener((o, was, is) -> show());
    button.focusedProperty().addListener((o, was, is) -> show());
    return button;
  }

  private void take(Offer offer) {
    desk.mending().take(offer);
  }

  /** Shows what is under the pointer, or else under the keyboard. */
  private void show() {
    desk.mending().show(first(Button::isHover).or(() -> first(Button::isFocused)));
  }

  private Optional<Offer> first(Predicate<Button> is) {
    return buttons.entrySet().stream()
        .filter(e -> is.test(e.getValue()))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
