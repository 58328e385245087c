package org.longlow.constraints.document;

/**
 * A value of a document and where it stands.
 *
 * @param path of the value
 * @param name of the entry it belongs to
 */
record Here(String path, String name, Object value) {

  /** Returns a value inside it, at a place of a list or under a key. */
  Here item(Object index, Object inner) {
    String at =
        index instanceof Integer i
            ? FieldPath.index(path, i)
            : FieldPath.key(path, index.toString());
    return new Here(at, name, inner);
  }
}
