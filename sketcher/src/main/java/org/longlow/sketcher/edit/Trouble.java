package org.longlow.sketcher.edit;

/** Why the last typed edit was refused. */
public record Trouble(Target target, String text, Trial.Refused refused) {}
