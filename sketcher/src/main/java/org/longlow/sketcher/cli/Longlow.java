package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.disk.Leftovers;
import org.longlow.constraints.words.OneLine;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command {@code longlow} with its subcommands. */
@Command(
    name = "longlow",
    version = "longlow " + Version.NUMBER,
    mixinStandardHelpOptions = true,
    scope = CommandLine.ScopeType.INHERIT,
    description = "Lays out one-off motorcycles in side elevation, with a real person on them.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:no finding fails",
      "1:internal error",
      "2:bad arguments or file",
      "3:a finding fails",
      "4:the layout contradicts itself"
    })
public final class Longlow implements Runnable {

  /** By the names in their annotations, in the order of the help. */
  private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("new", NewCommand.class);
    COMMANDS.put("demo", DemoCommand.class);
    COMMANDS.put("check", CheckCommand.class);
    COMMANDS.put("draw", DrawCommand.class);
    COMMANDS.put("templates", TemplatesCommand.class);
    COMMANDS.put("report", ReportCommand.class);
    COMMANDS.put("chart", ChartCommand.class);
    COMMANDS.put("list", ListCommand.class);
    COMMANDS.put("place", PlaceCommand.class);
    COMMANDS.put("fit", FitCommand.class);
    COMMANDS.put("compare", CompareCommand.class);
    COMMANDS.put("figure", FigureCommand.class);
    COMMANDS.put("open", OpenCommand.class);
  }

  /** Those that read a layout file before anything else. */
  private static final Set<String> READING =
      Set.of("check", "draw", "templates", "report", "chart", "list", "place", "fit", "compare");

  @Spec private CommandSpec spec;

  @Option(
      names = "--verbose",
      scope = CommandLine.ScopeType.INHERIT,
      description = "Show the trace of an internal error.")
  private boolean verbose;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(spec.commandLine(), "say what to do");
  }

  /** Runs a command line and returns its exit code, or {@link ExitCodes#STAY_OPEN}. */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    // figures read the same whatever the user's locale
    Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
    PrintWriter plainOut = new PlainWriter(out);
    PrintWriter plainErr = new PlainWriter(err);
    int code = answered(plainOut, plainErr, args);
    if (plainOut.checkError()) {
      plainErr.println("longlow: the output could not be written to its end; what is there is cut");
      code = code == ExitCodes.INTERNAL ? code : ExitCodes.BAD_INPUT;
    }
    plainErr.flush();
    return code;
  }

  private static int answered(PrintWriter out, PrintWriter err, String... args) {
    Longlow root = new Longlow();
    String[] words = args.length == 0 ? new String[] {"open"} : args;
    if (words[0].equals("help")) {
      // as many other programs take it
      words = words.length == 1 ? new String[] {"--help"} : new String[] {words[1], "--help"};
    }
    if (READING.contains(words[0])) {
      Loading.begin();
    }
    CommandLine line = line(root, words[0]);
    // true of the program alone; what stands in its annotation every command inherits
    line.getCommandSpec()
        .usageMessage()
        .footer("Without arguments the window opens. The guide is in it: F1, then Guide.");
    line.setOut(out).setErr(err).setColorScheme(plain());
    // a file called @thing is a file, not more arguments
    line.setExpandAtFiles(false);
    line.registerConverter(Path.class, new PathOption());
    line.setExecutionExceptionHandler((e, command, parsed) -> failed(root, e, err));
    line.setParameterExceptionHandler(
        (e, given) -> {
          err.println("longlow: " + OneLine.of(String.valueOf(e.getMessage())));
          CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
          err.println("longlow: see longlow " + name(e.getCommandLine()) + "--help");
          return ExitCodes.BAD_INPUT;
        });
    try {
      return line.execute(words);
    } catch (Error e) {
      // such as no memory or no stack left: files are whole or not there, so say it and end
      return internal(root, e, err);
    }
  }

  /**
   * The program with the command that is named first, or with all where none is: describing them
   * takes longer than some of them do.
   */
  private static CommandLine line(Longlow root, String first) {
    CommandLine line = new CommandLine(root);
    COMMANDS.forEach(
        (name, command) -> {
          if (first.equals(name) || !COMMANDS.containsKey(first)) {
            line.addSubcommand(command);
          }
        });
    CommandLine questions = line.getSubcommands().get("new");
    if (questions != null) {
      NewCommand.addQuestions(questions.getCommandSpec());
    }
    return line;
  }

  private static String name(CommandLine line) {
    return line.getParent() == null ? "" : line.getCommandName() + " ";
  }

  private static int failed(Longlow root, Exception e, PrintWriter err) {
    if (e instanceof Refusal refusal) {
      refusal.lines().forEach(l -> err.println("longlow: " + OneLine.of(l)));
      return ExitCodes.BAD_INPUT;
    }
    if (e instanceof FileSystemException refused && refused.getFile() != null) {
      err.println(
          "longlow: cannot write "
              + OneLine.of(meant(refused))
              + (advises(refused) ? "" : "; check the folder and free space"));
      return ExitCodes.BAD_INPUT;
    }
    if (e instanceof java.io.IOException) {
      err.println(
          "longlow: "
              + OneLine.of(String.valueOf(e.getMessage()))
              + "; check the folder and free space");
      return ExitCodes.BAD_INPUT;
    }
    return internal(root, e, err);
  }

  private static int internal(Longlow root, Throwable e, PrintWriter err) {
    err.println(
        "longlow: internal error: "
            + OneLine.of(String.valueOf(e))
            + (root.verbose ? "" : "; --verbose shows the trace"));
    if (root.verbose) {
      e.printStackTrace(err);
    }
    return ExitCodes.INTERNAL;
  }

  /** Whether a reason, which is ours then, says already what to do. */
  private static boolean advises(FileSystemException refused) {
    return refused.getReason() != null && refused.getReason().contains("; ");
  }

  /** The file, or the folder where it was to be written under a passing name. */
  private static String meant(FileSystemException refused) {
    Path path = Path.of(refused.getFile());
    if (Leftovers.isUnfinished(path)) {
      // it was written and could not be moved, or not even begun
      path = refused.getOtherFile() == null ? path.getParent() : Path.of(refused.getOtherFile());
    }
    String where = Files.isDirectory(path) ? "in the folder " + path : path.toString();
    return where + (refused.getReason() == null ? "" : " (" + refused.getReason() + ")");
  }

  private static CommandLine.Help.ColorScheme plain() {
    return CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF);
  }
}
