package org.longlow.sketcher.template;

/** Something on a template, drawn when it is known how this lies. */
@FunctionalInterface
interface TemplateStep {
  void on(TemplateLaying laying);
}
