package org.longlow.constraints.start;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;

/**
 * What somebody says of the machine they want; whatever they leave out Longlow chooses.
 *
 * @param rider who steers
 * @param second who else: rides it too where there is one seat, sits behind where there are two
 * @param seats how many, 1 or 2
 * @param wheelbaseMm mm; empty lets it follow from what must lie between the wheels
 * @param frontTyre size designation, such as {@code 110/80-16}
 * @param rearTyre likewise
 * @param reclineDeg how far the back rest leans back from the vertical, deg
 * @param drive what drives it
 * @param place where that is
 * @param box how large and heavy that is
 * @param tracing its outline, as long as the box
 * @param front how the front wheel is carried
 * @param law rule sets in force, by their words; empty for all
 */
public record Answers(
    Optional<Who> rider,
    Optional<Who> second,
    Optional<Integer> seats,
    Optional<Double> wheelbaseMm,
    Optional<String> frontTyre,
    Optional<String> rearTyre,
    Optional<Double> reclineDeg,
    Optional<Drive> drive,
    Optional<Place> place,
    Optional<Box> box,
    Optional<Tracing> tracing,
    Optional<FrontPart.Kind> front,
    Optional<List<String>> law) {

  /**
   * How the front wheel of a first machine may be carried: what has an upright is drawn by hand.
   */
  public static final List<FrontPart.Kind> FRONTS =
      Arrays.stream(FrontPart.Kind.values()).filter(kind -> !kind.twoLinks()).toList();

  public Answers {
    if (front.filter(FrontPart.Kind::twoLinks).isPresent()) {
      throw new IllegalArgumentException("a first machine has no front like " + front.get());
    }
  }

  /** Nothing said. */
  public static final Answers NONE = new Builder().answers();

  /** What drives a machine. */
  public enum Drive {
    /** Burns fuel from a tank. */
    ENGINE,
    /** Runs on a battery. */
    MOTOR
  }

  /** Where the drive is, seen from whoever rides. */
  public enum Place {
    /** Under the knees, between the shanks. */
    BEFORE,
    /** Under the seat. */
    UNDER,
    /** Behind the back, before the rear wheel. */
    BEHIND,
    /** In the rear wheel's hub; motors only. */
    HUB
  }

  /**
   * What the drive needs of room.
   *
   * @param lengthMm along the machine, mm; of a motor in the hub its diameter
   * @param heightMm mm; of a motor in the hub its diameter
   * @param breadthMm across, mm
   * @param massKg kg
   */
  public record Box(double lengthMm, double heightMm, double breadthMm, double massKg) {

    /** The smallest and the largest that first machines were tried with. */
    static final Box LEAST = new Box(100, 100, 60, 3);

    static final Box MOST = new Box(560, 380, 420, 110);
  }

  /** Collects answers one by one. */
  public static final class Builder {
    private Who rider;
    private Who second;
    private Integer seats;
    private Double wheelbaseMm;
    private String frontTyre;
    private String rearTyre;
    private Double reclineDeg;
    private Drive drive;
    private Place place;
    private Box box;
    private Tracing tracing;
    private FrontPart.Kind front;
    private List<String> law;

    public Builder rider(Who who) {
      rider = who;
      return this;
    }

    public Builder second(Who who) {
      second = who;
      return this;
    }

    public Builder seats(int count) {
      seats = count;
      return this;
    }

    public Builder wheelbaseMm(double mm) {
      wheelbaseMm = mm;
      return this;
    }

    public Builder frontTyre(String size) {
      frontTyre = size;
      return this;
    }

    public Builder rearTyre(String size) {
      rearTyre = size;
      return this;
    }

    public Builder reclineDeg(double deg) {
      reclineDeg = deg;
      return this;
    }

    public Builder drive(Drive what) {
      drive = what;
      return this;
    }

    public Builder place(Place where) {
      place = where;
      return this;
    }

    public Builder box(Box room) {
      box = room;
      return this;
    }

    public Builder tracing(Tracing outline) {
      tracing = outline;
      return this;
    }

    public Builder front(FrontPart.Kind kind) {
      front = kind;
      return this;
    }

    public Builder law(List<String> rules) {
      law = List.copyOf(rules);
      return this;
    }

    public Answers answers() {
      return new Answers(
          Optional.ofNullable(rider),
          Optional.ofNullable(second),
          Optional.ofNullable(seats),
          Optional.ofNullable(wheelbaseMm),
          Optional.ofNullable(frontTyre),
          Optional.ofNullable(rearTyre),
          Optional.ofNullable(reclineDeg),
          Optional.ofNullable(drive),
          Optional.ofNullable(place),
          Optional.ofNullable(box),
          Optional.ofNullable(tracing),
          Optional.ofNullable(front),
          Optional.ofNullable(law));
    }
  }
}
