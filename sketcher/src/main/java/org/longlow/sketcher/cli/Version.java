package org.longlow.sketcher.cli;

/** The version of the program. */
final class Version {

  static final String NUMBER = "0.1.0";

  private Version() {}
}
