package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;

/** What a part leaves out though nothing else gives it, so that findings miss it. */
public final class Lacking {

  private static final String MASS = "mass";
  private static final String RATE = "rate";

  private Lacking() {}

  /** Returns the keys of those fields, the one that most rests on first. */
  public static List<String> of(Part part) {
    List<String> keys = new ArrayList<>();
    if (part.base().mass().isEmpty() && !weighsByMaterial(part)) {
      keys.add(MASS);
    }
    if (part instanceof Part.Carrier carrier
        && carrier.rate().isEmpty()
        && !(isZero(carrier.bump()) && isZero(carrier.droop()))) {
      keys.add(RATE);
    }
    return keys;
  }

  private static boolean weighsByMaterial(Part part) {
    return part instanceof CushionPart // by board and foam
        || part.traits().filled() && Material.named(part.base().material()).isPresent();
  }

  private static boolean isZero(Formula formula) {
    return formula.expr() instanceof Expr.Num n && n.value() == 0;
  }

  /** Returns what is said in an empty field of a part, where its kind alone would say too much. */
  static String usual(Part part, Field<?, ?> field) {
    String usual = Usual.of(field);
    if (!of(part).contains(field.key())) {
      return usual;
    }
    return field.key().equals(MASS) && part.traits().filled()
        ? "not known: give it or a material"
        : "not known yet";
  }
}
