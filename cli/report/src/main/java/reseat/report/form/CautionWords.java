package reseat.report.form;

import reseat.ballmount.BondCaution;
import reseat.preload.DeviceCaution;

/** What a person must know of preload devices and of bonded balls, in sentences. */
public final class CautionWords {

  private CautionWords() {}

  /**
   * Puts a caution on a preload device into words.
   *
   * @param caution the caution
   * @return one sentence
   */
  public static String of(DeviceCaution caution) {
    return switch (caution) {
      case STORED_SPRING_ENERGY ->
          "The spring is under load: release it slowly with the screw, never let it fly off.";
      case MAGNET_PINCH ->
          "The magnets snap together and pinch fingers, and brittle magnets splinter; keep them from"
              + " heart pacemakers and magnetic scales, and keep chips away.";
      case MAGNET_NEVER_TOUCHES ->
          "The magnet faces must never touch in use: a touching face is a seventh contact.";
      case SCREW_LOCATES ->
          "A screw through both halves is stiff and may locate them: leave clearance around the shank"
              + " and let head or nut swivel, or put a spring under it.";
      case TORQUE_IS_LOOSE ->
          "Torque sets the force only loosely: most of it goes into friction that nobody controls.";
      case SNAPS_THROUGH ->
          "The disc is high for its thickness (h0/t above 1.41) and snaps through.";
      case NEARLY_FLAT ->
          "The disc is compressed past three quarters of its travel: the force rises faster than"
              + " computed as it rolls onto its neighbour.";
      case HARDLY_COMPRESSED ->
          "The disc is compressed less than 15 % of its travel: it rattles, and the upper inner edge may"
              + " crack under changing load (common practice).";
      case OVERSTRESSED -> "The spring is stressed beyond what its material is stated to bear.";
      case FALLING_WEIGHT ->
          "The weight falls if the half is lifted or tipped, and it shakes with the machine.";
      case PRESSURE_LOSS ->
          "When the supply fails the preload is gone: fit a check valve or a spring beside it.";
    };
  }

  /**
   * Puts a caution on a bonded ball into words.
   *
   * @param caution the caution
   * @return one or two sentences
   */
  public static String of(BondCaution caution) {
    return switch (caution) {
      case HANGS_ON_ADHESIVE ->
          "The ball hangs on the adhesive: its place creeps under load. Let it bottom on metal and use"
              + " the adhesive only to hold it there.";
      case GAP_STARVED ->
          "The gap is thinner than 0.05 mm: the joint may be starved of adhesive (0.05 to 0.125 mm gives"
              + " the best strength).";
      case GAP_THICK ->
          "The gap is thicker than 0.2 mm: the joint is softer, shrinks more on curing and is weaker.";
      case WARM ->
          "The joint works near the softening temperature of the adhesive: strength is reduced.";
      case CREEPS ->
          "The load that stays exceeds the share of the strength that is safe against creep.";
      case BREAKS ->
          "The peak load exceeds the share of the strength that is safe for a bonded joint.";
    };
  }
}
