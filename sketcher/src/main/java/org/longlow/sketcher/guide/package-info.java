/** The guide as blocks of text, for whoever shows it. Knows files of the guide only, no machine. */
package org.longlow.sketcher.guide;
