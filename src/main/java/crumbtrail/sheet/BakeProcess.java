package crumbtrail.sheet;

import crumbtrail.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was done, from mixing to storage. Parts that the baker does not mention are empty.
 *
 * @param room temperature of the kitchen, degrees Celsius
 * @param altitude height above the sea, kept in millimetres as every length is
 * @param remarks free sentences about the bake; searched for circumstances
 * @param steps the steps of a pasted recipe, which say what is to be done; what was done and how it
 *     came out stands in the remarks
 * @param fromSteps what of this was read from the steps of a pasted recipe or from the remarks, in
 *     words; empty where the fields of the sheet tell it all
 */
public record BakeProcess(
    Optional<Quantity> room,
    Temperatures temperatures,
    Mixing mixing,
    List<Stage> bulk,
    Shaping shaping,
    Vessel vessel,
    List<Stage> proof,
    Baking baking,
    Cooling cooling,
    Storage storage,
    Optional<Quantity> altitude,
    List<String> remarks,
    List<String> steps,
    List<String> fromSteps) {

  public BakeProcess {
    bulk = List.copyOf(bulk);
    proof = List.copyOf(proof);
    remarks = List.copyOf(remarks);
    steps = List.copyOf(steps);
    fromSteps = List.copyOf(fromSteps);
  }

  /** The same bake with the mixing changed. */
  public BakeProcess withMixing(Mixing other) {
    Copy copy = new Copy(this);
    copy.mixing = other;
    return copy.made();
  }

  /** The same bake with the first rise changed. */
  public BakeProcess withBulk(List<Stage> other) {
    Copy copy = new Copy(this);
    copy.bulk = other;
    return copy.made();
  }

  /** The same bake with the final proof changed. */
  public BakeProcess withProof(List<Stage> other) {
    Copy copy = new Copy(this);
    copy.proof = other;
    return copy.made();
  }

  /** The same bake with the baking changed. */
  public BakeProcess withBaking(Baking other) {
    Copy copy = new Copy(this);
    copy.baking = other;
    return copy.made();
  }

  /** The same bake with the remarks changed. */
  public BakeProcess withRemarks(List<String> other) {
    Copy copy = new Copy(this);
    copy.remarks = other;
    return copy.made();
  }

  /** The same bake with the shaping changed. */
  public BakeProcess withShaping(Shaping other) {
    Copy copy = new Copy(this);
    copy.shaping = other;
    return copy.made();
  }

  /** The same bake with the vessel changed. */
  public BakeProcess withVessel(Vessel other) {
    Copy copy = new Copy(this);
    copy.vessel = other;
    return copy.made();
  }

  /** The same bake with the cooling changed. */
  public BakeProcess withCooling(Cooling other) {
    Copy copy = new Copy(this);
    copy.cooling = other;
    return copy.made();
  }

  /** The same bake with other steps of its recipe. */
  public BakeProcess withSteps(List<String> other) {
    Copy copy = new Copy(this);
    copy.steps = other;
    return copy.made();
  }

  /** All that was written of the day in sentences: remarks, and the steps of its recipe. */
  public List<String> sentences() {
    return Stream.concat(remarks.stream(), steps.stream()).toList();
  }

  /** The same bake with another account of what was read from the steps of its recipe. */
  public BakeProcess withFromSteps(List<String> other) {
    Copy copy = new Copy(this);
    copy.fromSteps = other;
    return copy.made();
  }

  /** The parts of a process while one of them is exchanged. */
  private static final class Copy {
    private Optional<Quantity> room;
    private Temperatures temperatures;
    private Mixing mixing;
    private List<Stage> bulk;
    private Shaping shaping;
    private Vessel vessel;
    private List<Stage> proof;
    private Baking baking;
    private Cooling cooling;
    private Storage storage;
    private Optional<Quantity> altitude;
    private List<String> remarks;
    private List<String> steps;
    private List<String> fromSteps;

    Copy(BakeProcess from) {
      room = from.room();
      temperatures = from.temperatures();
      mixing = from.mixing();
      bulk = from.bulk();
      shaping = from.shaping();
      vessel = from.vessel();
      proof = from.proof();
      baking = from.baking();
      cooling = from.cooling();
      storage = from.storage();
      altitude = from.altitude();
      remarks = from.remarks();
      steps = from.steps();
      fromSteps = from.fromSteps();
    }

    BakeProcess made() {
      return new BakeProcess(
          room,
          temperatures,
          mixing,
          bulk,
          shaping,
          vessel,
          proof,
          baking,
          cooling,
          storage,
          altitude,
          remarks,
          steps,
          fromSteps);
    }
  }

  /** Temperatures of what goes into the bowl, degrees Celsius. */
  public record Temperatures(
      Optional<Quantity> flour, Optional<Quantity> liquid, Optional<Quantity> preferment) {}

  /**
   * @param method "hand", "stand mixer", "bread machine", "no-knead" … in the baker's words
   * @param speed "low", "medium", "high" … in the baker's words
   * @param rest autolyse or rest before kneading, minutes
   * @param fat when the fat went in: "at the start", "after kneading" …
   * @param doughTemperature measured after mixing, degrees Celsius
   */
  public record Mixing(
      Optional<String> method,
      Optional<Quantity> time,
      Optional<String> speed,
      Optional<Quantity> rest,
      Optional<String> fat,
      Optional<Quantity> doughTemperature) {}

  /**
   * @param pieces how many pieces the dough was divided into
   * @param tension "loose", "good", "tight" … in the baker's words
   * @param dustingFlour "none", "light", "heavy" … in the baker's words
   */
  public record Shaping(
      Optional<Integer> pieces,
      Optional<Quantity> pieceWeight,
      Optional<Quantity> benchRest,
      Optional<String> tension,
      Optional<String> dustingFlour) {}

  /**
   * @param kind "tin", "stone", "pot", "sheet", "basket" … in the baker's words
   * @param lid whether a lid was on during the bake
   */
  public record Vessel(Optional<String> kind, Optional<VesselSize> size, Optional<Boolean> lid) {}

  /**
   * The size of a tin or pot as written, either as one to three lengths in millimetres or as a
   * volume.
   *
   * @param written the words of the sheet
   * @param lengths in millimetres, longest first as written; empty when a volume was given
   * @param millilitres empty when lengths were given
   */
  public record VesselSize(String written, List<Double> lengths, Optional<Double> millilitres) {
    public VesselSize {
      lengths = List.copyOf(lengths);
    }
  }

  /**
   * @param steam "none", "some", "plenty" … in the baker's words
   * @param coreTemperature measured in the middle at the end of the bake, degrees Celsius
   */
  public record Baking(
      List<OvenStage> stages,
      Optional<Boolean> preheated,
      Optional<String> steam,
      Optional<Boolean> fan,
      Optional<Boolean> scored,
      Optional<Quantity> coreTemperature) {
    public Baking {
      stages = List.copyOf(stages);
    }
  }

  /** One stretch of the bake at one oven setting. */
  public record OvenStage(Optional<Quantity> time, Optional<Quantity> oven) {}

  /** How long the loaf cooled before it was cut, and whether it was wrapped before it was cold. */
  public record Cooling(Optional<Quantity> time, Optional<Boolean> wrapped) {}

  /** Where the bread was kept, in the baker's words, and for how long. */
  public record Storage(Optional<String> place, Optional<Quantity> time) {}
}
