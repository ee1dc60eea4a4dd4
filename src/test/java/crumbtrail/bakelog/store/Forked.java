package crumbtrail.bakelog.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program of the tests in a virtual machine of its own, so that it can be killed. */
final class Forked implements AutoCloseable {
  private final Process process;
  private final BufferedReader lines;

  private Forked(Process process) {
    this.process = process;
    this.lines =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  static Forked start(Class<?> main, String... arguments) throws IOException {
    return new Forked(
        new ProcessBuilder(command(main, arguments))
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start());
  }

  /** Starts it from a shell, after what the shell is told to do first. */
  static Forked after(List<String> shell, String first, Class<?> main, String... arguments)
      throws IOException {
    List<String> all = new ArrayList<>(shell);
    StringBuilder line = new StringBuilder(first).append(" && exec");
    command(main, arguments).forEach(word -> line.append(" '").append(word).append('\''));
    all.add(line.toString());
    return new Forked(
        new ProcessBuilder(all).redirectError(ProcessBuilder.Redirect.DISCARD).start());
  }

  private static List<String> command(Class<?> main, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-cp");
    command.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    command.add(main.getName());
    command.addAll(List.of(arguments));
    return command;
  }

  /** The next line that it prints, null when it has ended. */
  String line() throws IOException {
    return lines.readLine();
  }

  /** Everything that it prints until it ends. */
  List<String> rest() throws IOException {
    List<String> rest = new ArrayList<>();
    for (String line = line(); line != null; line = line()) {
      rest.add(line);
    }
    return rest;
  }

  /** As kill -9 does: it can neither notice nor tidy up. */
  void kill() {
    process.destroyForcibly().onExit().join();
  }

  @Override
  public void close() {
    kill();
  }
}
