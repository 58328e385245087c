package org.longlow.constraints.document;

import java.util.Collection;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Part;

/**
 * A place that rules look at.
 *
 * @param alone the key of the field that stands for the whole, or empty
 */
record SpotAt(Surroundings around, Here here, String alone) implements Spot {

  String path(String key) {
    String path = here.path();
    return key.equals(alone) || key.isEmpty() ? path : FieldPath.key(path, key);
  }

  @Override
  public String name() {
    return here.name();
  }

  @Override
  public Collection<String> known(Referent target) {
    return around.names(target);
  }

  @Override
  public Part part(String name) {
    return around.part(name);
  }

  @Override
  public Optional<Double> fixed(Formula formula) {
    return around.quantities.fixedValue(formula);
  }

  @Override
  public boolean isFree(String measure) {
    return around.quantities.isFree(measure);
  }

  @Override
  public boolean isSound(String key) {
    return around.faults.isSound(path(key));
  }

  @Override
  public boolean isSaid(String key) {
    return around.isSaid(path(key));
  }

  @Override
  public void fault(String key, String value, String message, String remedy) {
    around.faults.meaning(path(key), value, message, remedy);
  }

  @Override
  public void itemFault(String key, Object item, String value, String message, String remedy) {
    Here list = new Here(path(key), "", null);
    around.faults.meaning(list.item(item, null).path(), value, message, remedy);
  }
}
