package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.History;

/**
 * One layout being edited: where it is, how it came there, and where it is kept.
 *
 * <p>Belongs to one thread.
 */
public final class Session {

  private static final AtomicInteger COUNT = new AtomicInteger();

  private final History history;
  private final String stamp =
      Long.toString(System.currentTimeMillis(), 36)
          + "-"
          + Long.toString(ProcessHandle.current().pid(), 36)
          + "-"
          + COUNT.incrementAndGet();
  private final String firstName;
  private final Path drawings;
  private LayoutFile file;
  private Layout kept;

  /** What somebody else wrote into the file and was brought in; null if nothing was. */
  private Layout broughtIn;

  /** Whether the file holds an edit of somebody else that this layout goes without on purpose. */
  private boolean apart;

  private Session(Layout layout, LayoutFile file, Path drawings) {
    this.history = new History(layout);
    this.firstName = layout.name();
    this.file = file;
    this.drawings = drawings;
    this.kept = layout;
  }

  /** Returns a session on a layout that was read from {@code file}. */
  public static Session of(Layout layout, LayoutFile file) {
    return new Session(layout, file, null);
  }

  /** Returns a session on a layout that has no file yet and names no traced outlines. */
  public static Session withoutFile(Layout layout) {
    return new Session(layout, null, null);
  }

  /**
   * Returns a session on a layout that has no file yet, such as a shipped machine.
   *
   * @param drawings the folder with the traced outlines that it names
   */
  public static Session withoutFile(Layout layout, Path drawings) {
    return new Session(layout, null, drawings);
  }

  /** Returns a mark that no other session has, in this window or another. */
  String stamp() {
    return stamp;
  }

  /** Returns what the layout was called when the session began. */
  String firstName() {
    return firstName;
  }

  /** Returns the layout as it is now. */
  public Layout layout() {
    return history.layout();
  }

  /** Returns the file it was read from or last saved to. */
  public Optional<LayoutFile> file() {
    return Optional.ofNullable(file);
  }

  /** Returns the folder in which traced outlines are looked for. */
  public Optional<Path> folder() {
    return file().map(f -> f.path().getParent()).or(() -> Optional.ofNullable(drawings));
  }

  /** Returns whether there is anything that the file does not hold. */
  public boolean isChanged() {
    return !layout().equals(kept);
  }

  /** Applies an edit; one that changes nothing leaves no step behind. */
  public Layout apply(Edit edit) {
    return put(edit.name(), edit.applied(layout()));
  }

  /** Goes to another layout in one step, whatever was before; none if it is the same. */
  Layout put(String step, Layout after) {
    if (!after.equals(layout())) {
      history.add(step, after);
    }
    return layout();
  }

  /** Goes back one step; returns whether there was one. */
  public boolean undo() {
    return history.back();
  }

  /** Goes forward one step; returns whether there was one. */
  public boolean redo() {
    return history.forward();
  }

  /** Returns the name of the step that {@link #undo} takes back. */
  public Optional<String> undoName() {
    return history.backName();
  }

  /** Returns the name of the step that {@link #redo} does again. */
  public Optional<String> redoName() {
    return history.forwardName();
  }

  /**
   * Saves under another name, which is then the file of this session. Traced outlines that the new
   * folder does not have go with it.
   *
   * @throws IOException if it cannot be written; an older file is then as it was
   */
  public void saveAs(Path path) throws IOException {
    Layout now = layout();
    if (folder().isPresent()) {
      TracedFiles.copy(now, folder().get(), path.toAbsolutePath().getParent());
    }
    file = LayoutFile.save(now, path);
    kept = now;
    broughtIn = null;
    apart = false;
  }

  /** Returns whether somebody else changed the file since it was read or saved here. */
  public boolean changedOnDisk() {
    return file != null && file.changedOnDisk();
  }

  /** Returns whether the file holds an edit that was brought in from it and then taken back. */
  public boolean tookBack() {
    return broughtIn != null && !history.isBehind(broughtIn);
  }

  /** Returns whether saving to the file replaces an edit of somebody else, as was decided. */
  public boolean isApart() {
    return apart;
  }

  /** Keeps this layout whatever the file on disk says; it counts as changed until saved. */
  public void carryOn() {
    if (file != null) {
      file = file.seen();
      apart = file.exists();
    }
    broughtIn = null;
    kept = null;
  }

  /** Takes the layout that is on disk now, as a step that can be undone. */
  public LayoutFile.Opening bringIn() {
    if (file == null) {
      throw new IllegalStateException("this layout has no file to take");
    }
    LayoutFile.Opening opening = LayoutFile.open(file.path());
    if (opening instanceof LayoutFile.Opening.Opened opened) {
      Layout before = layout();
      put("bring in the other file", opened.layout());
      file = opened.file();
      kept = layout();
      broughtIn = layout() == before ? null : layout();
      apart = false;
    }
    return opening;
  }
}
