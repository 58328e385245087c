package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command {@code longlow} with its subcommands. */
@Command(
    name = "longlow",
    version = "longlow " + Longlow.VERSION,
    mixinStandardHelpOptions = true,
    scope = CommandLine.ScopeType.INHERIT,
    description = "Lays out one-off motorcycles in side elevation, with a real person on them.",
    footer = "Without arguments the window opens.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every finding passes",
      "1:internal error",
      "2:bad arguments or file",
      "3:a finding fails",
      "4:the layout contradicts itself"
    },
    subcommands = {
      DemoCommand.class,
      CheckCommand.class,
      DrawCommand.class,
      TemplatesCommand.class,
      ReportCommand.class,
      PlaceCommand.class,
      CompareCommand.class,
      FigureCommand.class,
      OpenCommand.class,
      WarmUpCommand.class
    })
public final class Longlow implements Runnable {

  /** The version of the program. */
  public static final String VERSION = "0.1.0";

  /** Returned by the command that opens the window: the program goes on. */
  public static final int STAY_OPEN = -1;

  @Spec private CommandSpec spec;

  @Option(names = "--verbose", description = "Show the trace of an internal error.")
  private boolean verbose;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "say what to do");
  }

  /** Runs a command line and returns its exit code, or {@link #STAY_OPEN}. */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    // figures read the same whatever the user's locale
    Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
    Longlow root = new Longlow();
    CommandLine line = new CommandLine(root);
    line.setOut(out).setErr(err).setColorScheme(plain());
    line.setExecutionExceptionHandler((e, command, parsed) -> failed(root, e, err));
    line.setParameterExceptionHandler(
        (e, given) -> {
          err.println("longlow: " + e.getMessage());
          CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
          err.println("longlow: see longlow " + name(e.getCommandLine()) + "--help");
          return ExitCodes.BAD_INPUT;
        });
    return args.length == 0 ? line.execute("open") : line.execute(args);
  }

  private static String name(CommandLine line) {
    return line.getParent() == null ? "" : line.getCommandName() + " ";
  }

  private static int failed(Longlow root, Exception e, PrintWriter err) {
    if (e instanceof Refusal refusal) {
      refusal.lines().forEach(l -> err.println("longlow: " + l));
      return ExitCodes.BAD_INPUT;
    }
    if (e instanceof FileSystemException refused && refused.getFile() != null) {
      err.println("longlow: cannot write " + meant(refused) + "; check the folder and free space");
      return ExitCodes.BAD_INPUT;
    }
    if (e instanceof java.io.IOException) {
      err.println("longlow: " + e.getMessage() + "; check the folder and free space");
      return ExitCodes.BAD_INPUT;
    }
    err.println(
        "longlow: internal error: " + e + (root.verbose ? "" : "; --verbose shows the trace"));
    if (root.verbose) {
      e.printStackTrace(err);
    }
    return ExitCodes.INTERNAL;
  }

  /** The file, or the folder where it was to be written under a passing name. */
  private static String meant(FileSystemException refused) {
    Path path = Path.of(refused.getFile());
    boolean passing = path.getFileName().toString().startsWith(".unfinished");
    return passing
        ? "in the folder " + path.getParent()
        : path + (refused.getReason() == null ? "" : " (" + refused.getReason() + ")");
  }

  private static CommandLine.Help.ColorScheme plain() {
    return CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF);
  }
}
