/** Files on disk: written whole or not at all, and never one over another's work. */
package org.longlow.constraints.disk;
