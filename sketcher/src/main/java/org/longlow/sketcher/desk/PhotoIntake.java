package org.longlow.sketcher.desk;

import java.nio.file.Path;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.sketcher.edit.PhotoEdits;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.photo.PhotoFile;
import org.longlow.sketcher.photo.UnreadPhoto;

/** Puts photos under the drawing. Belongs to the desk's thread. */
public final class PhotoIntake {

  /** Said before anything is put in, where the layout has no file yet. */
  public static final String NEEDS_A_FILE = BesideLayout.NEEDS_A_FILE;

  private final Desk desk;

  public PhotoIntake(Desk desk) {
    this.desk = desk;
  }

  /**
   * Puts a photo in, as broad as {@code box} until it is scaled.
   *
   * @param box mm, such as that of the machine
   */
  public void take(Path file, Envelope box) {
    Optional<Path> folder = BesideLayout.folder(desk);
    if (folder.isEmpty()) {
      return;
    }
    desk.queue(
        () -> {
          try {
            PhotoFile.Size size = PhotoFile.size(file);
            Optional<String> name = BesideLayout.within(folder.get(), file);
            return () -> {
              if (name.isPresent()) {
                put(name.get(), size, box);
              } else {
                BesideLayout.askToCopy(desk, file, folder.get(), copied -> put(copied, size, box));
              }
            };
          } catch (UnreadPhoto e) {
            return () ->
                desk.say(
                    Notice.Mood.BAD,
                    BesideLayout.TOPIC,
                    file.getFileName() + " " + e.getMessage() + ".");
          }
        });
  }

  private void put(String file, PhotoFile.Size size, Envelope box) {
    desk.session()
        .ifPresent(
            session -> {
              String name = PhotoEdits.unused(session.layout(), file);
              desk.edit(
                  PhotoEdits.put(name, file, size.widthPx(), size.heightPx(), box),
                  new Target.OfEntry(PhotoEdits.entry(name)),
                  "");
              desk.choose(Subjects.of(PhotoEdits.entry(name)));
            });
  }
}
