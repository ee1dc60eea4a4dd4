package crumbtrail.sheet;

/** A sheet that uses every key a bake sheet may have. The bake is invented. */
final class ContractSheet {

  static final String JSON =
      """
      {
        "title": "Tin loaf, Tuesday class at the tide mill",
        "style": "white tin loaf",
        "formula": [
          "500 g bread flour, 12.5 % protein",
          "310 g water",
          "1 1/2 tsp instant yeast",
          {"ingredient": "fine salt", "amount": "6 g"}
        ],
        "preferments": [
          {"name": "poolish", "formula": ["100 g bread flour", "100 g water", "0.1 g instant yeast"],
           "stages": [{"time": "12 h", "temperature": "20 C"}]}
        ],
        "process": {
          "room": "21 C",
          "temperatures": {"flour": "20 C", "liquid": "38 C", "preferment": "20 C"},
          "mixing": {"method": "stand mixer", "time": "8 min", "speed": "medium", "rest": "20 min",
                     "fat": "at the start", "doughTemperature": "29 C"},
          "bulk": [{"time": "60 min", "temperature": "24 C", "folds": 1, "covered": true},
                   {"time": "14 h", "temperature": "4 C"}],
          "shaping": {"pieces": 1, "pieceWeight": "900 g", "benchRest": "15 min", "tension": "loose",
                      "dustingFlour": "heavy"},
          "vessel": {"kind": "tin", "size": "9 x 5 x 2.75 in", "lid": false},
          "proof": [{"time": "75 min", "temperature": "30 C", "humidity": "80 %", "covered": true}],
          "baking": {"stages": [{"time": "15 min", "oven": "230 C"}, {"time": "20 min", "oven": "200 C"}],
                     "preheated": true, "steam": "none", "fan": false, "scored": false, "coreTemperature": "92 C"},
          "cooling": {"time": "20 min", "wrapped": false},
          "storage": {"place": "refrigerator", "time": "2 d"},
          "altitude": "1600 m",
          "remarks": ["used all-purpose flour because the bread flour ran out", "yeast jar opened a year ago"]
        },
        "seen": ["dense crumb near the base", {"sign": "pale-crust", "degree": "marked"}],
        "notSeen": ["sour smell"],
        "knownCauses": ["over-proofed"]
      }
      """;

  private ContractSheet() {}
}
