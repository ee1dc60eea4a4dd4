package crumbtrail.web;

import crumbtrail.api.Shelf;
import crumbtrail.handbook.Leaves;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a server has to show beside its reports. Each is asked for when a page first needs it and
 * not before, so that serving begins while the rules are still being laid out; whoever asks sooner
 * waits.
 *
 * @param catalogue causes and signs by name; empty where the server knows none
 * @param school works the lessons out; called from several threads
 * @param shelf what the rules know, to be looked up
 * @param leaves the pages of the handbook
 * @param pictures of the signs that reports speak of
 */
public record Stock(
    Optional<Supplier<Catalogue>> catalogue,
    Optional<Supplier<School>> school,
    Optional<Supplier<Shelf>> shelf,
    Optional<Supplier<Leaves>> leaves,
    LoafPictures pictures) {

  /** Nothing but pictures. */
  static Stock only(LoafPictures pictures) {
    return new Stock(
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), pictures);
  }

  Stock with(School made) {
    return new Stock(catalogue, Optional.of(() -> made), shelf, leaves, pictures);
  }

  Stock with(Shelf made) {
    return new Stock(
        Optional.of(made::catalogue), school, Optional.of(() -> made), leaves, pictures);
  }

  Stock with(Leaves made) {
    return new Stock(catalogue, school, shelf, Optional.of(() -> made), pictures);
  }
}
