package org.longlow.constraints.document;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;

/** The forms of the things of a layout. */
public final class Forms {

  private Forms() {}

  /** Returns the form of an entry; empty if there is none of that name. */
  public static Optional<Form> of(Layout layout, Entries.Entry entry) {
    Object value = Entries.of(layout, entry.group()).get(entry.name());
    return Optional.ofNullable(value)
        .map(
            v -> new FormWalk(layout).entry(Document.LAYOUT.field(entry.group()).type(), entry, v));
  }

  /** Returns the form of the layout's own demands. */
  public static Form demands(Layout layout) {
    return own(layout, "demands", StateKinds.DEMANDS, layout.demands());
  }

  /** Returns the form of what was measured on the machine that was made. */
  public static Form asBuilt(Layout layout) {
    return own(layout, "asBuilt", BuiltKinds.AS_BUILT, layout.asBuilt());
  }

  private static <T> Form own(Layout layout, String key, Kind<T> kind, T value) {
    FormWalk walk = new FormWalk(layout);
    walk.fields(kind, value, List.of(key), "", 0);
    return new Form(kind.name(), kind.help(), walk.rows());
  }

  /** Returns the form of name, title, title block, currency and notes of the layout. */
  public static Form whole(Layout layout) {
    FormWalk walk = new FormWalk(layout);
    for (String key : List.of("name", "title", "titleBlock", "currency", "notes")) {
      walk.field(Document.LAYOUT.field(key), layout, List.of(), "", 0);
    }
    return new Form(Document.LAYOUT.name(), Document.LAYOUT.help(), walk.rows());
  }
}
