package crumbtrail.quantity;

import java.util.Optional;

/**
 * The outcome of reading a quantity: either the quantity, or what is wrong and what would do.
 *
 * @param quantity the quantity, empty when the text could not be read
 * @param what what is wrong, as a sentence without its full stop; empty when all is well
 * @param remedy what would be accepted, as a sentence without its full stop
 */
public record QuantityReading(Optional<Quantity> quantity, String what, String remedy) {

  static QuantityReading of(Quantity quantity) {
    return new QuantityReading(Optional.of(quantity), "", "");
  }

  static QuantityReading refused(String what, String remedy) {
    return new QuantityReading(Optional.empty(), what, remedy);
  }
}
