package reseat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputChannelTest {

  private static final Path NONE = Path.of("no such link");

  @Test
  void textIsUtf8WhateverTheLocale() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintWriter writer = new OutputChannel(bytes, NONE).writer();
    writer.print("0.5 µm at 45°");
    writer.flush();
    assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo("0.5 µm at 45°");
  }

  @Test
  void aReaderThatWentAwayIsNoFailureOfOurs() {
    OutputChannel channel = failingWith("Broken pipe");
    assertThat(channel.failed()).isTrue();
    assertThat(channel.readerWentAway()).isTrue();
  }

  @Test
  void aReaderThatWentAwayIsKnownInAnyTongue(@TempDir Path folder) throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("1"), Path.of("pipe:[4711]"));
    assertThat(failingWith("Datenübergabe unterbrochen", link).readerWentAway()).isTrue();
    assertThat(failingWith("Datenübergabe unterbrochen").readerWentAway()).isFalse();
  }

  @Test
  void aFullDiskIsAFailureWithItsReason() {
    OutputChannel channel = failingWith("No space left on device");
    assertThat(channel.readerWentAway()).isFalse();
    assertThat(channel.failure()).isEqualTo("No space left on device");
  }

  @Test
  void nothingFailsWhileTheTargetTakesBytes() {
    OutputChannel channel = new OutputChannel(OutputStream.nullOutputStream(), NONE);
    PrintWriter writer = channel.writer();
    writer.println("all well");
    writer.flush();
    assertThat(channel.failed()).isFalse();
    assertThat(channel.failure()).isEmpty();
  }

  private static OutputChannel failingWith(String reason) {
    return failingWith(reason, NONE);
  }

  private static OutputChannel failingWith(String reason, Path link) {
    OutputChannel channel =
        new OutputChannel(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException(reason);
              }
            },
            link);
    PrintWriter writer = channel.writer();
    writer.println("lost");
    writer.flush();
    return channel;
  }
}
