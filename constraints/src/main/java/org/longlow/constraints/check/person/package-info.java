/** Findings on people: how they sit, bend, reach and see. */
package org.longlow.constraints.check.person;
