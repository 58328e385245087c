package org.longlow.sketcher.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.longlow.constraints.json.SvgSheet;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.edit.Target;

/** Takes outlines of parts from SVG files. Belongs to the desk's thread. */
public final class OutlineIntake {

  private final Desk desk;

  public OutlineIntake(Desk desk) {
    this.desk = desk;
  }

  /** Looks what there is to trace in a file; what cannot be read is told in a notice. */
  public void look(Path file, Consumer<SvgSheet> then) {
    desk.queue(
        () -> {
          SvgSheet sheet = SvgSheet.read(file);
          return () -> {
            if (sheet.fault().isEmpty()) {
              then.accept(sheet);
            } else {
              desk.say(
                  Notice.Mood.BAD,
                  BesideLayout.TOPIC,
                  file.getFileName() + " " + sheet.fault() + ".");
            }
          };
        });
  }

  /**
   * Makes an edit with a file that then lies beside the layout.
   *
   * @param part what is picked afterwards
   * @param edit of the name of the file there
   */
  public void take(Path file, String part, Function<String, Edit> edit) {
    Optional<Path> folder = BesideLayout.folder(desk);
    if (folder.isEmpty()) {
      return;
    }
    desk.queue(
        () -> {
          Optional<String> name = BesideLayout.within(folder.get(), file);
          return () -> {
            if (name.isPresent()) {
              make(part, edit.apply(name.get()));
            } else {
              BesideLayout.askToCopy(
                  desk, file, folder.get(), copied -> make(part, edit.apply(copied)));
            }
          };
        });
  }

  private void make(String part, Edit edit) {
    Target target =
        new Target.OfEntry(new org.longlow.constraints.document.Entries.Entry("parts", part));
    desk.edit(edit, target, "");
    desk.choose(Subjects.of(((Target.OfEntry) target).entry()));
  }
}
