/** Sentences whose figures are said in the units a reader asks for. Depends on nothing. */
package org.longlow.rider.words;
