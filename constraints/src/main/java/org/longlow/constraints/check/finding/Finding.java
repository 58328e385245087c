package org.longlow.constraints.check.finding;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/**
 * One answer about the machine.
 *
 * @param kind what was asked
 * @param about what it is about
 * @param stance the state in which it is worst; empty where it holds in every state
 * @param verdict how it came out
 * @param figures what was measured and its limit
 * @param basis what it rests on, in order
 * @param words one sentence for the user
 * @param site where on the machine, and how far open, it is worst
 * @param pull which way it would have something of a seat moved
 * @param unchecked whether it needs care only since what decides it is known from memory: as far as
 *     that goes it is inside its limits
 */
public record Finding(
    FindingKind kind,
    About about,
    Optional<Condition> stance,
    Verdict verdict,
    Figures figures,
    List<Basis> basis,
    Words words,
    Site site,
    Tug.Found pull,
    boolean unchecked) {

  /** Said of what would pass but for a ground that nobody has checked. */
  private static final Words UNCHECKED =
      Words.of(" That would pass, but what decides it is from memory: look up its source first.");

  /** What rests on memory does not pass: such a one needs care, and says so. */
  public Finding {
    basis = List.copyOf(basis);
    if (verdict == Verdict.PASS && basis.stream().anyMatch(Basis::decidesFromMemory)) {
      verdict = Verdict.CAUTION;
      words = Words.of(words, UNCHECKED);
      unchecked = true;
    }
    unchecked |= kind.fromMemory();
  }

  /** Makes a finding that has no place on the elevation. */
  public Finding(
      FindingKind kind,
      About about,
      Optional<Condition> stance,
      Verdict verdict,
      Figures figures,
      List<Basis> basis,
      Words words) {
    this(kind, about, stance, verdict, figures, basis, words, Site.NOWHERE, Tug.NONE, false);
  }

  /** Returns a finding that fails where its value is outside its limit and passes else. */
  public static Finding held(
      FindingKind kind,
      About about,
      Optional<Condition> stance,
      Figures figures,
      List<Basis> basis,
      Words words) {
    return new Finding(kind, about, stance, figures.verdict(), figures, basis, words);
  }

  /** Returns a finding that measures nothing and is the same in every stance. */
  public static Finding note(
      FindingKind kind, About about, Verdict verdict, Basis basis, Words words) {
    return new Finding(kind, about, Optional.empty(), verdict, Figures.NONE, List.of(basis), words);
  }

  /** Returns its stable name, such as {@code gap.tank.rider}; never read back. */
  public String id() {
    return Stream.concat(Stream.of(kind.word()), about.path().stream())
        .collect(Collectors.joining("."));
  }

  /** Returns its sentence with figures as programs read them, in mm, kg and N. */
  public String text() {
    return text(Units.MM);
  }

  /** Returns its sentence with figures in these units. */
  public String text(Units units) {
    if (!figures.near()) {
      return words.in(units);
    }
    int more = said(units).more();
    Words said = finer(more);
    // a sentence may say coarser what a table says in millimetres, such as the road in metres
    while (more < SaidFigures.MOST
        && Math.abs(value() - limit()) >= SaidFigures.ALIKE
        && saysAlike(said, units)) {
      said = finer(++more);
    }
    return said.in(units);
  }

  private Words finer(int more) {
    return more > 0 ? words.finer(Set.of(value(), limit()), more) : words;
  }

  private boolean saysAlike(Words said, Units units) {
    List<String> limits = said.saying(limit(), units);
    return said.saying(value(), units).stream().anyMatch(limits::contains);
  }

  /** Whether there is something to mend, to try or to decide: what people are shown first. */
  public boolean open() {
    return verdict == Verdict.FAIL || verdict == Verdict.CAUTION && !aside();
  }

  /** Whether it needs care, but for nothing about the machine: read a source, or a text of law. */
  public boolean aside() {
    return verdict == Verdict.CAUTION && (unchecked || kind.notCovered());
  }

  /** Returns what it is about, in the user's names. */
  public String subject() {
    return about.words();
  }

  /** Returns the person it is about, on which seat, if it is about one. */
  public Optional<Occupant> who() {
    return about.who();
  }

  /** Returns what it belongs to, and so the caution that goes with it. */
  public FindingGroup group() {
    return kind.group();
  }

  /** Returns the state in which it is worst, in words; empty where it holds in every state. */
  public String stanceWords() {
    return stance.map(Condition::says).orElse("");
  }

  /**
   * Returns the state in which it is worst for the start of its sentence, such as {@code , at full
   * bump}; empty where the sentence or the person it is about says it already.
   */
  public String when() {
    String text = text();
    return stance
        .filter(c -> !text.contains(c.says()))
        .filter(c -> c.kind() != Stance.Kind.LADEN || !text.contains(c.people()))
        .map(
            c ->
                switch (c.kind()) {
                  case FULL_BUMP, FULL_DROOP -> ", at " + c.says();
                  case OPEN -> ", with " + c.stance().section() + " open";
                  default -> ", " + c.says();
                })
        .orElse("");
  }

  /** Returns where its figures and limits come from, in words, in mm, kg and N. */
  public String source() {
    return source(Units.MM);
  }

  /** Returns its figures as they are said in these units. */
  public SaidFigures said(Units units) {
    return SaidFigures.of(figures, units);
  }

  /** Returns its figure where that stands alone; a bare count would not say of what. */
  public String figure(Units units) {
    SaidFigures said = said(units);
    if (unit() != FigureUnit.COUNT || !(limit() > 0)) {
      return said.value();
    }
    return said.value() + (value() > limit() ? ", at most " : " of ") + said.limit();
  }

  /** Returns where its figures and limits come from, in words, in these units. */
  public String source(Units units) {
    return basis.stream().map(b -> b.words().in(units)).collect(Collectors.joining("; "));
  }

  public double value() {
    return figures.value();
  }

  public double limit() {
    return figures.limit();
  }

  public double margin() {
    return figures.margin();
  }

  public FigureUnit unit() {
    return figures.unit();
  }

  /** See {@link Site#where}. */
  public Optional<PointMm> where() {
    return site.where();
  }

  /** See {@link Site#across}. */
  public OptionalDouble across() {
    return site.across();
  }

  /** See {@link Site#opening}. */
  public OptionalDouble opening() {
    return site.opening();
  }

  /** See {@link Site#from}. */
  public OptionalDouble from() {
    return site.from();
  }

  /** Returns this finding with a place on the elevation. */
  public Finding at(PointMm point) {
    return at(new Site(Optional.of(point), across(), opening(), from()));
  }

  /**
   * Returns this finding with a place in space.
   *
   * @param acrossMm where it is across the machine, left positive, mm
   */
  public Finding at(PointMm point, double acrossMm) {
    return at(new Site(Optional.of(point), OptionalDouble.of(acrossMm), opening(), from()));
  }

  /** Returns this finding as one that is worst where a section is open by {@code share}. */
  public Finding openBy(double share) {
    return at(new Site(where(), across(), OptionalDouble.of(share), from()));
  }

  /** Returns this finding as one that begins where a section is open by {@code share}. */
  public Finding openFrom(double share) {
    return at(new Site(where(), across(), opening(), OptionalDouble.of(share)));
  }

  private Finding at(Site other) {
    return new Finding(kind, about, stance, verdict, figures, basis, words, other, pull, unchecked);
  }

  /** Returns this finding as one of a state of the machine. */
  public Finding in(Condition condition) {
    return new Finding(
        kind, about, Optional.of(condition), verdict, figures, basis, words, site, pull, unchecked);
  }

  /** Returns this finding with what was measured. */
  public Finding measured(Figures other) {
    return new Finding(kind, about, stance, verdict, other, basis, words, site, pull, unchecked);
  }

  /** Returns this finding as one that would have something moved; see {@link Contradicting}. */
  public Finding pulling(Optional<Tug> other) {
    return other.isEmpty() ? this : pulling(() -> other);
  }

  /** As {@link #pulling(Optional)}, found when somebody reads it. */
  public Finding pulling(Supplier<Optional<Tug>> other) {
    return new Finding(
        kind, about, stance, verdict, figures, basis, words, site, new Tug.Found(other), unchecked);
  }

  public Finding withText(Words other) {
    return new Finding(kind, about, stance, verdict, figures, basis, other, site, pull, unchecked);
  }

  public Finding withVerdict(Verdict other) {
    return new Finding(kind, about, stance, other, figures, basis, words, site, pull, false);
  }

  /** Returns the groups with a caution that have findings here, in their order. */
  public static List<FindingGroup> groupsWithCaution(Collection<Finding> findings) {
    return Arrays.stream(FindingGroup.values())
        .filter(g -> !g.caution().isEmpty())
        .filter(g -> findings.stream().anyMatch(f -> f.group() == g))
        .toList();
  }
}
