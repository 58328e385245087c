package org.longlow.sketcher.fx;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.condition.EnabledIf;

/** Tests that open a window; left out where the toolkit cannot lay out text. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@EnabledIf(
    value = "org.longlow.sketcher.fx.WindowTest#textCanBeLaidOut",
    disabledReason = "the window toolkit lacks the system's text libraries (libpango) here")
@interface Windowed {}
