package org.longlow.constraints.check;

import java.util.Locale;
import org.longlow.constraints.study.TestMachine;

/** Plain boxes put into a whole machine. */
public final class Boxes {

  private Boxes() {}

  public static String mm(double value) {
    return String.format(Locale.ROOT, "'%.9f mm'", value);
  }

  /** A box by two corners of the elevation and how far it reaches to the left and right. */
  public static TestMachine add(
      TestMachine machine,
      String name,
      double[] corners,
      double leftMm,
      double rightMm,
      String more) {
    String outline =
        String.format(
            Locale.ROOT,
            "{'points': [['0 mm', '0 mm'], [%1$s, '0 mm'], [%1$s, %2$s], ['0 mm', %2$s]]}",
            mm(corners[2] - corners[0]),
            mm(corners[3] - corners[1]));
    return machine
        .with(
            "parts",
            name,
            "{'kind': 'box', 'frame': '"
                + name
                + "Pin', 'outline': "
                + outline
                + ", 'left': "
                + mm(leftMm)
                + ", 'right': "
                + mm(rightMm)
                + ", 'mass': '0.1 kg'"
                + more
                + "}")
        .with(
            "pins",
            name + "Pin",
            "{'at': [" + mm(corners[0]) + ", " + mm(corners[1]) + "], 'nailed': true}");
  }

  public static double[] at(double x0, double z0, double x1, double z1) {
    return new double[] {x0, z0, x1, z1};
  }

  public static String rail(String from, String to, double diameterMm, double yMm, String more) {
    return "{'kind': 'rail', 'path': ['"
        + from
        + "', '"
        + to
        + "'], 'diameter': "
        + mm(diameterMm)
        + ", 'wall': '1.5 mm', 'bendRadius': '80 mm', 'y': "
        + mm(yMm)
        + ", 'material': 'steel'"
        + more
        + "}";
  }
}
