package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * What the works of the desk (files, edits, drags) need of it. They know this and not the desk,
 * which knows them. Belongs to the owner's thread.
 */
abstract class Surface {

  /** Returns the session on the board, if there is one. */
  abstract Optional<Session> session();

  /** Returns whether that very session is on the board. */
  abstract boolean isAt(Session that);

  /** Returns what is shown, once it is worked out. */
  abstract Optional<BoardState> shown();

  abstract PictureOptions options();

  /** Changes how the picture is asked for. */
  abstract void look(UnaryOperator<PictureOptions> change);

  /** Returns whether every question asked so far is answered. */
  abstract boolean isIdle();

  /** Puts another session on the board. */
  abstract void begin(Session next);

  /** The layout was changed: keep a copy and show it. */
  abstract void changed();

  /** Has what is there worked out and shown, and tells the watchers that it is asked. */
  abstract void ask();

  /** Does a job on the worker, and what it returns on the owner's thread. */
  abstract void queue(Supplier<Runnable> job);

  /** Does something now, or to what the edits asked for before it give. */
  abstract void inTurn(Runnable next);

  /** Tells the watchers that something has changed. */
  abstract void tell();

  abstract List<Notice> notices();

  /** Shows a notice with answers. */
  abstract void tell(Notice notice);

  /** Shows a notice; a later one of the same topic takes its place. */
  abstract void say(Notice.Mood mood, String topic, String text);

  /** Takes a notice away. */
  abstract void dropNotice(String topic);
}
