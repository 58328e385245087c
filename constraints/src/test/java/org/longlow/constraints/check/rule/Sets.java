package org.longlow.constraints.check.rule;

import org.junit.jupiter.params.converter.TypedArgumentConverter;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.RuleSet;

/** The bodies of rules by their short names. */
final class Sets extends TypedArgumentConverter<String, RuleSet> {

  static final RuleSet US_FEDERAL = named("us");
  static final RuleSet UN_R53 = named("un-r53");
  static final RuleSet UK = named("uk");

  private Sets() {
    super(String.class, RuleSet.class);
  }

  private static RuleSet named(String id) {
    return LawTables.sets().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  @Override
  protected RuleSet convert(String id) {
    return named(id);
  }
}
