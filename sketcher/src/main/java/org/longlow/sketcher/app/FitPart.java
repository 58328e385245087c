package org.longlow.sketcher.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.disk.PartFile;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.CrowdRun;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Judged;
import org.longlow.constraints.fit.JudgedLine;
import org.longlow.constraints.words.Progress;

/**
 * Judges a crowd so that a run that is stopped can be gone on with: what is judged is kept beside
 * the table that it makes, until that is written.
 */
public final class FitPart {

  private final Path folder;
  private final String work;
  private int before;
  private Optional<Path> aside = Optional.empty();

  private FitPart(Path folder, String work) {
    this.folder = folder;
    this.work = work;
  }

  /**
   * @param work all that decides what comes out
   */
  public static FitPart in(Path folder, List<byte[]> work) {
    return new FitPart(folder, "longlow fit " + digest(work));
  }

  private static String digest(List<byte[]> work) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (byte[] bytes : work) {
        digest.update(MessageDigest.getInstance("SHA-256").digest(bytes));
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("each Java platform has SHA-256", e);
    }
  }

  /** Judges them all, keeping nothing. */
  public static FitReport none(BodyJudge judge, Crowd crowd, int threads, Progress progress) {
    return new CrowdRun(judge, crowd, threads, progress, () -> false).run().orElseThrow();
  }

  /** Returns how many were judged by the run before. */
  public int before() {
    return before;
  }

  /** Returns where the part of another run was put that lay in the way. */
  public Optional<Path> aside() {
    return aside;
  }

  /** Judges those who are not judged yet. */
  public FitReport run(BodyJudge judge, Crowd crowd, int threads, Progress progress)
      throws IOException {
    Files.createDirectories(folder);
    try (PartFile part = PartFile.beside(folder.resolve(FitSet.PEOPLE), work)) {
      aside = part.aside();
      Map<Integer, Judged> known = new HashMap<>();
      for (String line : part.before()) {
        JudgedLine.read(line, crowd).ifPresent(p -> known.put(p.index(), p));
      }
      before = known.size();
      return new CrowdRun(judge, crowd, threads, progress, () -> false)
          .run(
              known,
              fresh -> {
                try {
                  part.add(fresh.stream().map(JudgedLine::of).toList());
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              })
          .orElseThrow();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Takes away what was kept: the tables are written. */
  public static void done(Path folder) throws IOException {
    PartFile.drop(folder.resolve(FitSet.PEOPLE));
  }
}
