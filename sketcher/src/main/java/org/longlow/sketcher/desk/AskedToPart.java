package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a machine may be left: with unsaved work it is asked once, with what can be done. What is
 * still being tried is waited for.
 */
public final class AskedToPart {

  private static final String WAITS = "wait";

  private final Desk desk;
  private final Runnable save;
  private boolean waits;

  public AskedToPart(Desk desk, Runnable save) {
    this.desk = desk;
    this.save = save;
  }

  /**
   * Returns whether to part now; asked again it is so if the work is kept. Where something is being
   * tried it is not, and is asked, or done, once that is known; what is refused keeps it here.
   *
   * @param doing what is asked for, as in the sentence
   * @param button the word for it
   * @param part does it
   */
  public boolean may(String doing, String button, Runnable part) {
    if (desk.isTrying()) {
      await(doing, button, part);
      return false;
    }
    waits = false;
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

  private void await(String doing, String button, Runnable part) {
    if (waits) {
      desk.tell(
          new Notice(
              WAITS,
              Notice.Mood.CARE,
              "What was done last is still being worked out.",
              List.of(new Notice.Answer(button + " without it", part))));
      return;
    }
    waits = true;
    desk.inTurn(
        () -> {
          desk.dropNotice(WAITS);
          if (desk.trouble().isEmpty() && may(doing, button, part)) {
            part.run();
          }
        });
  }
}
