package org.longlow.constraints.document;

import java.util.Set;

/**
 * How a file wrote what a layout no longer tells.
 *
 * @param objects paths of what is an object although a short form would do
 * @param said paths of what is written out although it has its usual value
 * @param unread paths of what is missing or could not be read
 */
public record Written(Set<String> objects, Set<String> said, Set<String> unread) {}
