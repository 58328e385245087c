package org.longlow.constraints.law;

/**
 * What a body of rules asks that the tables cannot answer.
 *
 * @param name short name in ids
 * @param text what it is and why it is not answered, one clause
 */
public record NotCovered(RuleSet rules, String name, String text, LawSource source) {}
