/**
 * A study as one page to read, send and print.
 *
 * <p>In: a {@link org.longlow.constraints.study.Study}. Out: one HTML document as text that needs
 * nothing else: styles and the elevation are inside it, there are no scripts and no links to the
 * network. Every word that comes from the layout is escaped. The same study gives the same text,
 * whatever the default locale or clock.
 */
package org.longlow.sketcher.report;
