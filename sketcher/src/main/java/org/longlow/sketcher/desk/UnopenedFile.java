package org.longlow.sketcher.desk;

import java.nio.file.Path;
import java.util.List;
import org.longlow.constraints.document.Fault;

/** A file that could not be opened. */
public record UnopenedFile(Path path, List<Fault> faults) {}
