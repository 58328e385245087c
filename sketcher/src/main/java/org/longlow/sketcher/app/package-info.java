/**
 * Use cases shared by commands and the window: make drawings, templates and reports, answer
 * figures, compare layouts. Pure or writing whole files only; no toolkit.
 */
package org.longlow.sketcher.app;
