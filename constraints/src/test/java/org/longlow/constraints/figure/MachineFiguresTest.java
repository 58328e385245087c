package org.longlow.constraints.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.figure.MachineFigures.Kind;

class MachineFiguresTest {

  static List<Kind<?, ?>> kinds() {
    return MachineFigures.all().stream().filter(k -> !k.name().equals("body")).toList();
  }

  /** The names are a contract, scripts read them: what each figure takes and what it answers. */
  private static final String PUBLISHED =
      """
      tyre: size
        > widthMm sectionHeightMm diameterMm freeRadiusMm sectionRadiusMm nearEquivalent
      trail: radiusMm rakeDeg offsetMm > groundTrailMm normalTrailMm flopMm
      lean: wheelbaseMm front rear point rollDeg
        > touchRollDeg touchPitchDeg clearanceMm pitchDeg
      turn: speedKmh radiusM cgHeightMm sectionRadiusMm
        > idealRollDeg correctionDeg rollDeg loadFactor
      axle-loads: wheelbaseMm masses
        > massKg cgXMm cgZMm frontN rearN frontShare brakeLiftG driveLiftG
      breakover: wheelbaseMm front rear point > rearDeg frontDeg breakoverDeg
      side-wind: rakeDeg wheelbaseMm groundTrailMm point forceN > armMm momentNm steers leans
      stability: w c lambda g r_R m_R I_Rxx I_Ryy x_B z_B m_B I_Bxx I_Bxz I_Byy I_Bzz
          x_H z_H m_H I_Hxx I_Hxz I_Hyy I_Hzz r_F m_F I_Fxx I_Fyy speedsMs
        > M C1 K0 K2 weaveSpeedMs capsizeSpeedMs eigenvalues
      chain: teeth pitchMm centreMm > exactLinks links centreMm
      cope: branchRadiusMm branchInnerRadiusMm mainRadiusMm angleDeg offsetMm stationsDeg
        > stations
      foam: layers pressureKPa > layers sinkMm remainingMm verdict caution
      foam-test: densityKgM3 thicknessMm presses
        > ifd25N supportFactor cv40KPa residualShare presses caution
      seat-load: massKg backDeg panDeg backCentreShare headRest handsShare
        > backN headRestN pegsN handsN panVerticalN panNormalN panShearN frictionNeeded
      """;

  @Test
  void inputsAndOutputsCarryThePublishedNames() throws ClassNotFoundException {
    List<String> there = new ArrayList<>();
    for (Kind<?, ?> kind : kinds()) {
      Class<?> output = Class.forName(kind.inputType().getName().replace("$Input", "$Output"));
      there.add(kind.name() + ": " + names(kind.inputType()) + " > " + names(output));
    }
    List<String> published = Arrays.asList(PUBLISHED.strip().split("\\n(?! )"));
    assertThat(there)
        .containsExactlyElementsOf(published.stream().map(k -> k.replaceAll("\\s+", " ")).toList());
  }

  private static String names(Class<?> record) {
    return Arrays.stream(record.getRecordComponents())
        .map(RecordComponent::getName)
        .collect(Collectors.joining(" "));
  }

  /** Either an answer of finite numbers, or faults: never another error, never a silent NaN. */
  @ParameterizedTest
  @MethodSource("kinds")
  <I extends Record, O extends Record> void hostileInputIsAnsweredOrRefused(Kind<I, O> kind)
      throws ReflectiveOperationException {
    SplittableRandom random = new SplittableRandom(99);
    Function<I, O> answer = kind.answer();
    int answered = 0;
    int refused = 0;
    for (int i = 0; i < (Boolean.getBoolean("longlow.long") ? 3_000 : 600); i++) {
      // From all plausible to all wild, so that both outcomes and near misses occur.
      I input = kind.inputType().cast(make(kind.inputType(), random, i % 5 * 0.03));
      try {
        finite(answer.apply(input), input);
        answered++;
      } catch (FigureFaults e) {
        assertThat(e.faults()).isNotEmpty();
        refused++;
      } catch (RuntimeException e) {
        fail("neither answered nor refused: " + input, e);
      }
    }
    assertThat(answered).isPositive();
    assertThat(refused).isPositive();
  }

  private static Object make(Class<?> record, SplittableRandom random, double wild)
      throws ReflectiveOperationException {
    RecordComponent[] parts = record.getRecordComponents();
    Object[] values = new Object[parts.length];
    Class<?>[] types = new Class<?>[parts.length];
    for (int i = 0; i < parts.length; i++) {
      types[i] = parts[i].getType();
      values[i] = value(parts[i].getGenericType(), parts[i].getName(), random, wild);
    }
    var constructor = record.getDeclaredConstructor(types);
    constructor.setAccessible(true);
    return constructor.newInstance(values);
  }

  private static Object value(Type type, String name, SplittableRandom random, double wild)
      throws ReflectiveOperationException {
    if (random.nextDouble() < wild / 3) {
      return null;
    }
    if (type == Double.class) {
      return number(name, random, wild);
    }
    if (type == Integer.class) {
      return random.nextDouble() < wild ? random.nextInt(-1000, 1000) : random.nextInt(5, 60);
    }
    if (type == Boolean.class) {
      return random.nextBoolean();
    }
    if (type == String.class) {
      String[] sizes = {"120/70 R17", "MT90-16", "3.50-18", "", "?", "1/1-1", "9999/99 R17"};
      return sizes[random.nextInt(sizes.length)];
    }
    if (type instanceof ParameterizedType list) {
      List<Object> items = new ArrayList<>();
      int count = random.nextDouble() < wild ? random.nextInt(4) : name.equals("presses") ? 3 : 2;
      for (int i = 0; i < count; i++) {
        items.add(
            name.equals("presses") && random.nextDouble() >= wild
                // a slab of 150 to 700 mm is pressed to a quarter, nearly half and two thirds
                ? new FoamTestFigure.Press(60.0 * (i + 1), 8.0 * Math.pow(1.6, i + 1))
                : value(list.getActualTypeArguments()[0], name, random, wild));
      }
      return items;
    }
    return make((Class<?>) type, random, wild);
  }

  private static Double number(String name, SplittableRandom random, double wild) {
    if (random.nextDouble() < wild) {
      double[] wilds = {
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        0,
        -0.0,
        -1,
        1e-300,
        1e300,
        -1e9,
        Double.MIN_VALUE,
        Double.MAX_VALUE,
        90,
        89.9999999
      };
      return wilds[random.nextInt(wilds.length)];
    }
    return switch (name) {
      case "wheelbaseMm" -> random.nextDouble(1000, 2000);
      case "sectionRadiusMm", "branchInnerRadiusMm" -> random.nextDouble(0, 60);
      case "branchRadiusMm" -> random.nextDouble(5, 40);
      case "offsetMm" -> random.nextDouble(-10, 60);
      case "mainRadiusMm" -> random.nextDouble(20, 60);
      case "rakeDeg", "angleDeg", "rollDeg" -> random.nextDouble(0, 89);
      case "xMm" -> random.nextDouble(0, 1500);
      case "lambda" -> random.nextDouble(0, 0.7);
      case "x_B", "x_H", "c" -> random.nextDouble(0, 1);
      case "z_B", "z_H" -> random.nextDouble(-1, 0);
      case "pitchMm" -> random.nextDouble(6, 20);
      case "densityKgM3" -> random.nextDouble(20, 60);
      case "ifd25N" -> random.nextDouble(80, 300);
      case "supportFactor" -> random.nextDouble(1.9, 2.8);
      case "polymerDensityKgM3" -> random.nextDouble(900, 1250);
      case "backCentreShare" -> random.nextDouble(0.5, 0.8);
      case "handsShare" -> random.nextDouble(0, 0.1);
      default -> name.endsWith("Mm") ? random.nextDouble(150, 700) : random.nextDouble(0, 30);
    };
  }

  private static void finite(Object out, Object input) throws ReflectiveOperationException {
    if (out instanceof Double number) {
      if (!Double.isFinite(number)) {
        fail("answered " + out + " for " + input);
      }
    } else if (out instanceof List<?> list) {
      for (Object item : list) {
        finite(item, input);
      }
    } else if (out instanceof Record) {
      for (RecordComponent part : out.getClass().getRecordComponents()) {
        part.getAccessor().setAccessible(true);
        finite(part.getAccessor().invoke(out), input);
      }
    }
  }
}
