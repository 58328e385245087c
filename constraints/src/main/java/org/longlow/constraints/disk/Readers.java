package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;

/** Who may read and write a file. */
final class Readers {

  private Readers() {}

  /** Gives {@code to} the permissions of {@code from}, and its group where that is allowed. */
  static void copy(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (view != null) {
      PosixFileAttributes old = Files.readAttributes(from, PosixFileAttributes.class);
      if (!old.group().equals(view.readAttributes().group())) {
        try {
          view.setGroup(old.group());
        } catch (IOException e) {
          // one who does not belong to that group cannot give a file to it
        }
      }
      view.setPermissions(old.permissions());
      return;
    }
    AclFileAttributeView list = Files.getFileAttributeView(to, AclFileAttributeView.class);
    AclFileAttributeView old = Files.getFileAttributeView(from, AclFileAttributeView.class);
    if (list != null && old != null) {
      list.setAcl(old.getAcl());
    }
  }
}
