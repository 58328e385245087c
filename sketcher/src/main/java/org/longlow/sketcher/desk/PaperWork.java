package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.app.PartPaper;
import org.longlow.sketcher.app.Ready;
import org.longlow.sketcher.app.RuleLength;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;

/**
 * Paper as it is being chosen: every choice is worked out on a thread of its own, the latest wins,
 * and what comes back is shown sheet by sheet and written as it is. Belongs to the owner's thread.
 */
public final class PaperWork {

  private final Executor owner;
  private final Path home;
  private final Runnable changed;
  private final LatestWins worker = new LatestWins("longlow-paper");
  private final PaperPress press = new PaperPress();
  private volatile int asked;
  private Study study;
  private List<String> parts = List.of();
  private PaperChoice choice = PaperChoice.FIRST;

  /** Whose usual paper was offered last. */
  private Units usual = Units.MM;

  private Printers printers;
  private Ready ready;
  private Map<String, PartPaper> sheets = Map.of();
  private String words = "";
  private boolean working;
  private int at;

  /**
   * @param home where printers are kept
   * @param changed called on the owner's thread whenever there is news
   */
  public PaperWork(Executor owner, Path home, Runnable changed) {
    this.owner = owner;
    this.home = home;
    this.changed = changed;
    this.printers = Printers.at(home);
  }

  /**
   * Returns where the papers of a machine go unless somebody says otherwise: beside its file, or,
   * where it has none, into a folder of the user's own. Where only its traced outlines lie nobody
   * looks for papers.
   *
   * @param home of the user
   */
  public static Path folder(Session session, Path home) {
    String machine = session.layout().name();
    return session
        .file()
        .map(file -> file.path().resolveSibling(machine + "-made"))
        .orElseGet(() -> home.resolve("Longlow").resolve(machine));
  }

  /**
   * Begins with a machine; of parts chosen before, those that it has stay ticked. Paper that nobody
   * chose is what is usual where its units are.
   */
  public void begin(Study of, UnaryOperator<PaperChoice> first) {
    study = of;
    Units before = usual;
    usual = of.layout().units();
    parts = Making.partsWithTemplates(of);
    printers = Printers.at(home);
    sheets = Map.of();
    choose(
        c -> {
          PaperChoice next = first.apply(c.withUsualPaper(before, usual));
          boolean known = printers.of(next.printer()).isPresent();
          return next.withTicked(
                  new HashSet<>(parts.stream().filter(next.ticked()::contains).toList()))
              .withPrinter(known ? next.printer() : "");
        });
  }

  public PaperChoice choice() {
    return choice;
  }

  /** Returns the printers that were measured. */
  public Printers printers() {
    return printers;
  }

  /** Returns what paper each part with a template takes, as far as that is known. */
  public Map<String, Optional<PartPaper>> parts() {
    Map<String, Optional<PartPaper>> all = new LinkedHashMap<>();
    parts.forEach(part -> all.put(part, Optional.ofNullable(sheets.get(part))));
    return all;
  }

  /** Returns what can be written now; empty while it is worked out, or if it cannot be made. */
  public Optional<Ready> ready() {
    return Optional.ofNullable(ready);
  }

  /** Returns what is shown, how far it is, or why there is nothing to show. */
  public String words() {
    return words;
  }

  public boolean isWorking() {
    return working;
  }

  /** Returns the sheets that would be written. */
  public List<Page> pages() {
    return ready == null ? List.of() : ready.pages();
  }

  /** Returns the number of the sheet shown, from 0. */
  public int at() {
    return at;
  }

  /** Shows another sheet; stays at the first and the last. */
  public void turn(int by) {
    at = Math.max(0, Math.min(pages().size() - 1, at + by));
    changed.run();
  }

  /** Chooses otherwise. */
  public void choose(UnaryOperator<PaperChoice> change) {
    PaperChoice next = change.apply(choice);
    boolean other = next.kind() != choice.kind();
    choice = next;
    at = other ? 0 : at;
    work();
  }

  private void work() {
    int mine = ++asked;
    PaperChoice now = choice;
    Printers known = printers;
    Study of = study;
    ready = null;
    working = true;
    words = "working out the sheets";
    changed.run();
    worker.ask(
        () -> {
          Optional<PaperPress.Printed> printed;
          String trouble = "";
          try {
            printed =
                press.print(
                    of, now, known, LocalDate.now(), (what, d, n) -> step(mine, what, d, n));
          } catch (IllegalArgumentException e) {
            printed = Optional.empty();
            trouble = e.getMessage();
          } catch (RuntimeException e) {
            printed = Optional.empty();
            trouble = "That could not be worked out: " + e.getMessage();
          }
          Optional<PaperPress.Printed> result = printed;
          String wrong = trouble;
          owner.execute(() -> come(mine, result, wrong));
        });
  }

  private boolean step(int mine, String what, int done, int of) {
    owner.execute(
        () -> {
          if (mine == asked && working) {
            words = what + ", " + (done + 1) + " of " + of;
            changed.run();
          }
        });
    return mine == asked;
  }

  private void come(int mine, Optional<PaperPress.Printed> printed, String trouble) {
    if (mine != asked) {
      return;
    }
    working = false;
    ready = printed.map(PaperPress.Printed::ready).orElse(null);
    printed.ifPresent(
        p -> {
          if (!p.sheets().isEmpty()) {
            sheets = p.sheets();
          }
        });
    words = ready == null ? trouble : ready.words();
    at = Math.max(0, Math.min(pages().size() - 1, at));
    changed.run();
  }

  /**
   * Keeps what the bars of a calibration page measured, typed in mm, and corrects for that printer
   * from now on.
   *
   * @return why it is not kept; empty if it is
   */
  public Optional<String> measure(String name, String across, String along) {
    String printer = name.strip();
    Optional<String> refused =
        Printers.refusal(printer)
            .or(() -> refusal("across", across))
            .or(() -> refusal("along", along));
    if (refused.isPresent()) {
      return refused;
    }
    try {
      PrintCorrection measured =
          PrintCorrection.measured(mm(across).orElseThrow(), mm(along).orElseThrow()).of(printer);
      printers = Printers.keep(home, measured);
      choose(c -> c.withPrinter(printer));
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of("not kept: " + e.getMessage());
    }
  }

  private static Optional<String> refusal(String way, String text) {
    return mm(text)
        .map(mm -> PrintCorrection.refusal(mm).map(why -> "the bar " + way + " measures " + why))
        .orElse(
            Optional.of(
                "what does the bar "
                    + way
                    + " measure? Type it in millimetres, such as 199.4 for the long one, or as 7.86 in"));
  }

  private static Optional<Double> mm(String text) {
    return RuleLength.mm(text.replace(',', '.'));
  }

  /** Returns the papers that can be chosen by name. */
  public static List<String> papers() {
    return Stream.concat(Paper.NAMED.stream().map(Paper::name), Stream.of("roll 610", "roll 24 in"))
        .toList();
  }
}
