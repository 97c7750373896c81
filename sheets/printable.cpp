#include "sheets/printable.hpp"

#include <array>
#include <initializer_list>

#include <fmt/format.h>

#include "sheets/typeset.hpp"

namespace sparewright::sheets {
namespace {

struct Letter {
  char32_t number = 0;
  std::size_t bytes = 1;
  bool valid = false;
};

// The first letter of a text that is not empty. RFC 3629, section 4: no overlong forms, no surrogates, up to U+10FFFF.
Letter first_letter(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(0);
  if (lead < 0x80U) return {lead, 1, true};
  const std::size_t bytes = lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
  if (lead < 0xC2U || lead > 0xF4U || text.size() < bytes) return {};
  char32_t number = lead & (0xFFU >> (bytes + 1));
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return {};
    number = (number << 6U) | (byte(i) & 0x3FU);
  }
  constexpr std::array<char32_t, 5> kLeast{0, 0, 0x80, 0x800, 0x10000};
  const bool surrogate = number >= 0xD800 && number <= 0xDFFF;
  if (number < kLeast.at(bytes) || number > 0x10FFFF || surrogate) return {};
  return {number, bytes, true};
}

// Changes every text of a packet in place.
class Preparing {
 public:
  Preparing(const Press& press, base::Dialect dialect) : press_(press), dialect_(dialect) {}

  bool take_replaced() { return std::exchange(replaced_, false); }

  void names(std::initializer_list<std::string*> texts) {
    for (std::string* text : texts)
      *text = printable(*text, press_, replaced_);
  }
  void sizes(std::initializer_list<std::string*> texts) {
    for (std::string* text : texts)
      *text = typeset(printable(*text, press_, replaced_));
  }
  void sentences(std::initializer_list<std::string*> texts) {
    for (std::string* text : texts)
      *text = typeset(printable(base::worded(*text, dialect_), press_, replaced_));
  }
  void lists(std::initializer_list<std::vector<std::string>*> lists) {
    for (std::vector<std::string>* list : lists) {
      for (std::string& text : *list)
        sentences({&text});
    }
  }

  void first(FirstSheet& f) {
    names({&f.hand});
    sizes({&f.material, &f.blank});
    sentences({&f.sizes_in, &f.the_rest});
    lists({&f.sizes_that_matter, &f.cautions});
    for (Mate& mate : f.mates) {
      names({&mate.name});
      sentences({&mate.measured, &mate.good_to, &mate.how});
    }
    for (Check& c : f.checks) {
      names({&c.subject});
      sentences({&c.check, &c.margin, &c.reason, &c.todo});
    }
    for (Query& q : f.queries) {
      names({&q.overruled});
      sentences({&q.says, &q.happens, &q.todo});
    }
  }

  // Names as typed and sizes that are printed already.
  void drawing(drawing::PartContent& content) {
    for (drawing::LengthMark& mark : content.marks.lengths) {
      for (std::string& line : mark.says)
        sizes({&line});
    }
    for (drawing::NoteMark& note : content.marks.notes) {
      for (std::string& line : note.lines)
        names({&line});
    }
  }

  void card(Card& card) {
    names({&card.title, &card.revision, &card.asked});
    sentences({&card.answer, &card.good_to, &card.how, &card.source, &card.rows_label});
    lists({&card.missing, &card.cautions, &card.notes});
    for (CardRow& row : card.rows) {
      names({&row.name});
      sentences({&row.value, &row.from});
    }
  }

  void measured(MeasuredSize& size) {
    names({&size.name});
    sizes({&size.value, &size.good_to});
    for (std::string& says : size.on_sketch)
      names({&says});
    lists({&size.says});
  }

  void list(route::ListSheet& sheet) {
    sentences({&sheet.name});
    lists({&sheet.cautions});
    for (route::ListSection& section : sheet.sections) {
      sentences({&section.heading});
      lists({&section.says, &section.ticks, &section.blanks, &section.table.headings});
      for (auto& row : section.table.rows)
        lists({&row});
    }
  }

  void setup(route::SetupSheet& s) {
    names({&s.done_before});
    sizes({&s.stock});
    sentences({&s.the_rest});
    lists({&s.sizes_that_matter, &s.machine, &s.check, &s.hold, &s.pick_up, &s.before_unclamp, &s.if_wrong,
           &s.cautions});
    for (route::Item& item : s.items) {
      std::visit([&](auto& what) { this->item(what); }, item);
    }
    for (std::string& dial : s.dials)
      sentences({&dial});
    std::visit([&](auto& seen) { view(seen); }, s.view);
  }

 private:
  void item(route::Line& l) {
    sentences({&l.says, &l.x_reads, &l.y_reads, &l.z_reads, &l.rpm, &l.feed, &l.expect});
  }
  void item(route::Stop& s) {
    sentences({&s.says, &s.rule});
    for (route::ProofReading& reading : s.readings)
      sentences({&reading.what, &reading.expect});
  }
  void item(route::Note& n) { sentences({&n.says}); }

  void view(std::monostate&) {}
  void view(route::TurnedView& v) {
    names({&v.holder, &v.free_end});
    sentences({&v.tail});
    for (auto& step : v.steps)
      names({&step.name});
  }
  void view(route::PlanView& v) {
    names({&v.left_side, &v.right_side, &v.near_side, &v.far_side});
    for (auto& hole : v.holes)
      names({&hole.name});
    for (auto* cut : {&v.flats, &v.forms}) {
      for (auto& one : *cut)
        names({&one.name});
    }
  }

  const Press& press_;
  base::Dialect dialect_;
  bool replaced_ = false;
};

}  // namespace

std::string printable(std::string_view text, const Press& press, bool& replaced) {
  std::string out;
  while (!text.empty()) {
    const Letter letter = first_letter(text);
    const std::string_view written = text.substr(0, letter.bytes);
    const bool is_space = letter.number == '\n' || letter.number == '\r' || letter.number == '\t';
    if (letter.valid && is_space) {
      out += ' ';
    } else if (letter.valid && press.has(letter.number)) {
      out += written;
    } else {
      replaced = true;
      out += letter.valid ? fmt::format("U+{:04X}", static_cast<std::uint32_t>(letter.number))
                          : fmt::format("0x{:02X}", static_cast<unsigned char>(written.front()));
    }
    text.remove_prefix(letter.bytes);
  }
  return out;
}

PrintablePacket printable(const Packet& packet, base::Dialect dialect, const Press& press) {
  PrintablePacket result{packet};
  Preparing preparing(press, dialect);
  preparing.names({&result.packet.title, &result.packet.revision});
  result.head_replaced = preparing.take_replaced();
  preparing.first(result.packet.first);
  result.first_replaced = preparing.take_replaced();
  preparing.sentences({&result.packet.no_drawing});
  if (result.packet.drawing) preparing.drawing(*result.packet.drawing);
  result.drawing_replaced = preparing.take_replaced();
  const auto add_lists = [&](std::vector<route::ListSheet>& lists, std::vector<bool>& replaced) {
    for (route::ListSheet& list : lists) {
      preparing.list(list);
      replaced.push_back(preparing.take_replaced());
    }
  };
  add_lists(result.packet.before, result.before_replaced);
  add_lists(result.packet.after, result.after_replaced);
  for (route::SetupSheet& setup : result.packet.setups) {
    preparing.names({&setup.name});
    const bool name_replaced = preparing.take_replaced();
    preparing.setup(setup);
    const bool rest_replaced = preparing.take_replaced();
    result.setups_replaced.push_back(name_replaced || rest_replaced);
    result.first_replaced = result.first_replaced || name_replaced;  // it lists the sheets that follow
  }
  return result;
}

PrintableMeasuring printable(const MeasuringPacket& packet, base::Dialect dialect, const Press& press) {
  PrintableMeasuring result{packet};
  Preparing preparing(press, dialect);
  preparing.names({&result.packet.title, &result.packet.revision});
  for (route::ListSheet& list : result.packet.lists)
    preparing.list(list);
  for (MeasuredSize& size : result.packet.sizes)
    preparing.measured(size);
  preparing.lists({&result.packet.agreement});
  result.replaced = preparing.take_replaced();
  return result;
}

PrintableCard printable(const Card& card, base::Dialect dialect, const Press& press) {
  PrintableCard result{card};
  Preparing preparing(press, dialect);
  preparing.card(result.card);
  result.replaced = preparing.take_replaced();
  return result;
}

}  // namespace sparewright::sheets
