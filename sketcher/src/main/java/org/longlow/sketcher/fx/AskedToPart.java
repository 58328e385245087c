package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Parting;

/** Whether a machine may be left: with unsaved work it is asked once, with what can be done. */
final class AskedToPart {

  private final Desk desk;
  private final Runnable save;

  AskedToPart(Desk desk, Runnable save) {
    this.desk = desk;
    this.save = save;
  }

  /**
   * Returns whether to part; asked again it is so if the work is kept.
   *
   * @param doing what is asked for, as in the sentence
   * @param button the word for it
   * @param part does it
   */
  boolean may(String doing, String button, Runnable part) {
    Optional<Parting> parting = desk.files().parting(doing);
    boolean said = desk.notices().stream().anyMatch(n -> n.topic().equals(doing));
    if (parting.isEmpty() || said && parting.get().kept()) {
      return true;
    }
    boolean kept = parting.get().kept();
    List<Notice.Answer> answers = new ArrayList<>();
    if (parting.get().unsaved()) {
      answers.add(new Notice.Answer("Save", save));
    }
    answers.add(new Notice.Answer(kept ? button : button + " and lose it", part));
    desk.tell(
        new Notice(
            doing, kept ? Notice.Mood.CARE : Notice.Mood.BAD, parting.get().words(), answers));
    return false;
  }
}
