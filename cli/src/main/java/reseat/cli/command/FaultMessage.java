package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** What a command's exception means to the person who typed the command: one line, one code. */
final class FaultMessage {

  private FaultMessage() {}

  /**
   * Reports an exception in one line.
   *
   * @param command the command as typed, such as {@code reseat check}
   * @param cause what was thrown
   * @param err where the line goes
   * @return {@link ExitCode#BAD_INPUT} if a file could not be read or written, {@link
   *     ExitCode#OUR_FAULT} for anything else
   */
  static int report(String command, Exception cause, PrintWriter err) {
    if (cause instanceof UncheckedIOException wrapped) {
      return report(command, wrapped.getCause(), err);
    }
    if (cause instanceof IOException e) {
      err.println(command + ": " + reason(e));
      return ExitCode.BAD_INPUT;
    }
    if (cause instanceof InvalidPathException e) {
      err.println(command + ": " + e.getInput() + ": not a file name: " + e.getReason());
      return ExitCode.BAD_INPUT;
    }
    err.println(
        command
            + ": a fault of the program, not of your input; please report this line, and what --trace adds to it: "
            + oneLine(cause.toString())
            + place(cause));
    return ExitCode.OUR_FAULT;
  }

  /**
   * Reports an exception as {@link #report} does, and where a fault of the program came from: every
   * step of the way to it and to what caused it.
   *
   * @param command the command as typed, such as {@code reseat check}
   * @param cause what was thrown
   * @param err where the lines go
   * @return what {@link #report} returns
   */
  static int reportTraced(String command, Exception cause, PrintWriter err) {
    int code = report(command, cause, err);
    if (code == ExitCode.OUR_FAULT) {
      cause.printStackTrace(err);
    }
    return code;
  }

  private static String reason(IOException e) {
    if (e instanceof FileSystemException about && about.getFile() != null) {
      return about.getFile() + ": " + reason(about);
    }
    return "cannot read or write: " + oneLine(e.getMessage());
  }

  private static String reason(FileSystemException e) {
    if (e instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (e instanceof AccessDeniedException) {
      return "you may not read or write it";
    }
    if (e instanceof FileAlreadyExistsException) {
      return "exists already; add --force to replace it";
    }
    if (e instanceof AtomicFolder.StandingFolderException) {
      return e.getReason();
    }
    if (e instanceof NotDirectoryException) {
      return "not a folder";
    }
    if (e instanceof DirectoryNotEmptyException) {
      return "the folder is not empty";
    }
    return "cannot read or write: " + oneLine(e.getReason());
  }

  private static String place(Throwable cause) {
    for (StackTraceElement frame : cause.getStackTrace()) {
      if (frame.getClassName().startsWith("reseat.")) {
        return " at " + frame.getFileName() + ":" + frame.getLineNumber();
      }
    }
    return "";
  }

  private static String oneLine(String text) {
    return text == null ? "no reason given" : text.replace('\n', ' ').replace('\r', ' ');
  }
}
