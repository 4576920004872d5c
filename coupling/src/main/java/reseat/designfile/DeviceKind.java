package reseat.designfile;

import java.util.Optional;
import reseat.preload.PreloadDevice;

/** How one kind of preload device is written in a file. */
interface DeviceKind {

  /** Key of what is set at the bench. */
  String settingKey();

  /** What to change if the device is too weak. */
  String stronger();

  /**
   * Reads the device, at its setting or, where none is written, at any setting at all.
   *
   * @param s its table
   * @param materials the file's materials
   * @return the device, unless something is wrong
   */
  Optional<? extends PreloadDevice> read(Section s, MaterialReader materials);
}
