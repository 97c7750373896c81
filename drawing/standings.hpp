// Where the names of a picture stand, and the letters that stand for names with no room. Used inside this room only.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "drawing/label.hpp"
#include "drawing/plan_view.hpp"

namespace sparewright::drawing {

// A label, and the name it was broken from.
struct Name {
  std::string says;
  Label label;
  bool of_feature = false;  // a letter may stand for it
};

// Letters for names that find no room, as long as that helps the rest.
class Standings {
 public:
  // ground and ruler outlive it.
  Standings(std::vector<Name> names, const Ground& ground, const Ruler& ruler);

  // The words into `words`, the room round them that is not hatched, the key and the names left over into the picture.
  void add_to(Picture& picture, DisplayList& words, std::vector<Box>& not_hatched) const;

 private:
  void place();
  // Not one that is a name in the picture. Past the last letter they go on as A2, B2.
  [[nodiscard]] std::string next_letter(std::size_t& letter) const;
  // Whether there was one to give.
  bool give_letters();

  std::vector<Name> names_;
  std::vector<bool> by_letter_;
  std::vector<Label> labels_;
  std::vector<std::optional<Standing>> standing_;
  const Ground& ground_;
  const Ruler& ruler_;
};

}  // namespace sparewright::drawing
