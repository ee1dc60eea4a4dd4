package crumbtrail.pantry;

/**
 * What the pantry holds for a name.
 *
 * @param ingredient the ingredient taken
 * @param name the pantry name that matched
 * @param assumed whether the name said too little, or something the pantry does not know, so that
 *     the ingredient is a guess that the baker should be told of
 * @param note the guess in words, empty if {@code assumed} is false: "flour taken as all-purpose
 *     flour"
 */
public record Find(Ingredient ingredient, String name, boolean assumed, String note) {}
