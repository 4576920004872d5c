package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NotDirectoryException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FaultMessageTest {

  private final StringWriter err = new StringWriter();

  static Stream<Arguments> fileProblems() {
    return Stream.of(
        Arguments.of(new AccessDeniedException("a.toml"), "a.toml: you may not read or write it"),
        Arguments.of(
            new FileAlreadyExistsException("a.toml"),
            "a.toml: exists already; add --force to replace it"),
        Arguments.of(new NotDirectoryException("out"), "out: not a folder"),
        Arguments.of(new DirectoryNotEmptyException("out"), "out: the folder is not empty"),
        Arguments.of(
            new FileSystemException("a.toml", null, "Input/output error"),
            "a.toml: cannot read or write: Input/output error"),
        Arguments.of(
            new UncheckedIOException(new IOException("Is a directory")),
            "cannot read or write: Is a directory"),
        Arguments.of(new IOException(), "cannot read or write: no reason given"),
        Arguments.of(
            new InvalidPathException("a\0b", "Nul character not allowed"),
            "a\0b: not a file name: Nul character not allowed"));
  }

  @ParameterizedTest
  @MethodSource("fileProblems")
  void aFileProblemNamesTheFileAndTheReason(Exception problem, String message) {
    assertThat(report(problem)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).hasToString("reseat check: " + message + System.lineSeparator());
  }

  @Test
  void anUnforeseenFaultIsOneLineWithItsPlace() {
    assertThat(report(new IllegalArgumentException("first\nsecond"))).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString()).contains("first second").contains("FaultMessageTest.java:");
  }

  private int report(Exception problem) {
    return FaultMessage.report("reseat check", problem, new PrintWriter(err, true));
  }
}
