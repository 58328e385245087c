package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.app.InTheWay;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.GettingInPicture;
import org.longlow.sketcher.picture.LayerChoice;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.View;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.sketcher.picture.Views;
import org.longlow.svg.page.Paper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow draw}: dimensioned views. */
@Command(
    name = "draw",
    description =
        "Draws the dimensioned elevation, front view or plan, or all three, with whom and in which"
            + " stance you say.")
final class DrawCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "X.svg|X.pdf",
      description = "Where to draw it; the ending says how.")
  private Path out;

  @Option(
      names = "--paper",
      defaultValue = "a3",
      converter = PaperOption.class,
      description = {
        "a4, letter, a3, tabloid, a0 or WxH in mm; \"roll 610\" for a roll 610 mm wide, cut as",
        "long as the drawing needs; ${DEFAULT-VALUE} unless said."
      })
  private Paper paper;

  @Option(
      names = "--view",
      defaultValue = "side",
      converter = ViewKindOption.class,
      paramLabel = "side|front|plan|all",
      description = {
        "Which view: side, front, plan (from above), or all, the three in line at one scale;",
        "${DEFAULT-VALUE} unless said."
      })
  private Views.Kind kind;

  @Option(
      names = "--projection",
      converter = ProjectionOption.class,
      paramLabel = "first-angle|third-angle",
      description = {
        "Where front view and plan stand about the elevation with --view all (ISO 5456-2):",
        "first-angle, left of it and below it, or third-angle, right of it and above it;",
        "first-angle unless said."
      })
  private Views.Projection projection;

  @Mixin private ViewOption view;

  @Option(
      names = "--getting-in",
      paramLabel = "PERSON",
      description = {
        "Draws instead how somebody gets in, pose by pose, with every section open; getting out",
        "is the way back. A name of the crew, on the rider's seat, or \"NAME as SEAT\"."
      })
  private String gettingIn;

  @Option(
      names = "--ink",
      defaultValue = "colour",
      converter = InkOption.class,
      paramLabel = "colour|black",
      description = {
        "With what it is printed: colour, or black alone, lines told apart by width and type;",
        "${DEFAULT-VALUE} unless said."
      })
  private SheetInk ink;

  @Option(
      names = "--layers",
      split = ",",
      paramLabel = "NAMES",
      description = {
        "Which layers are drawn, such as wheels,frame,dimensions, or which are not, such as",
        "no-person,no-notes; all unless said. A wrong name is answered by all names."
      })
  private List<String> names;

  @Mixin private SheetOption onSheet;

  @Mixin private VariantOption variant;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    SheetOption.drawing(out);
    Outputs.file(out, file);
    new Unused()
        .see(projection != null && kind != Views.Kind.ALL, "--projection")
        .refuse("only --view all has views that stand about another");
    Study study = variant.of(units.on(Loading.layout(file)), file).study();
    PictureOptions options = view.of(study);
    LayerChoice layers = layers();
    DimensionedElevation.Sheet sheet;
    Optional<Occupant> enters = enters(study);
    try {
      sheet =
          enters.isPresent()
              ? GettingInPicture.sheet(
                  study, enters.get(), onSheet.scale(), paper, onSheet.issued())
              : ViewSheets.sheet(
                  study,
                  options,
                  new Views(kind, projection(), layers),
                  onSheet.scale(),
                  paper,
                  onSheet.issued());
    } catch (OutOfRange e) {
      throw onSheet.refused(e);
    }
    Making.Drawn drawn =
        Making.drawing(study, sheet.with(layers).in(ink), out, InTheWay.Consent.GIVEN);
    PrintWriter text = spec.commandLine().getOut();
    text.println(
        "drawn at "
            + drawn.scale()
            + ", "
            + enters
                .map(who -> who.words() + " getting in")
                .orElseGet(() -> View.shown(study, options).words())
            + ": "
            + out);
    drawn.kept().ifPresent(k -> text.println(Outputs.kept(k)));
    text.flush();
    return ExitCodes.of(study);
  }

  /** Returns who is to be drawn getting in. */
  private Optional<Occupant> enters(Study study) {
    if (gettingIn == null) {
      return Optional.empty();
    }
    if (view.isGiven() || kind != Views.Kind.SIDE) {
      throw new Refusal("--getting-in draws its own strip; leave out --who, --stance and --view");
    }
    List<Occupant> all =
        study.sittings().stream()
            .filter(s -> s.posture().isPresent())
            .map(Sitting::occupant)
            .toList();
    return Optional.of(
        SaidOccupant.of(study, gettingIn.strip())
            .filter(all::contains)
            .orElseThrow(
                () ->
                    new Refusal(
                        "--getting-in is '"
                            + gettingIn
                            + "'; "
                            + (all.isEmpty()
                                ? "nobody sits on this machine"
                                : "there are "
                                    + String.join(
                                        ", ", all.stream().map(Occupant::words).toList())))));
  }

  private Views.Projection projection() {
    return projection == null ? Views.Projection.FIRST_ANGLE : projection;
  }

  private LayerChoice layers() {
    try {
      return names == null ? LayerChoice.ALL : LayerChoice.of(names);
    } catch (OutOfRange e) {
      throw new Refusal("--layers: " + e.getMessage());
    }
  }
}
