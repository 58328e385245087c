package org.longlow.sketcher.cli;

import java.util.concurrent.Callable;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import picocli.CommandLine.Command;

/** Loads what a check loads; the launcher runs it once to make later starts quick. */
@Command(name = "warm-up", hidden = true, description = "Loads classes for the launcher.")
final class WarmUpCommand implements Callable<Integer> {

  @Override
  public Integer call() {
    Layout layout = Demos.layout(Demos.names().get(0));
    StudyJson.of(Study.of(layout));
    return ExitCodes.PASS;
  }
}
