package org.longlow.constraints.disk;

import java.io.File;

/** Whether this is Windows, where an open file can be neither replaced nor deleted. */
final class Windows {

  static final boolean IS = File.separatorChar == '\\';

  private Windows() {}
}
