/** Text for people, fit for a terminal whatever it quotes. */
package org.longlow.constraints.words;
