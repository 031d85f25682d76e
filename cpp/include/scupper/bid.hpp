#pragma once
// Pay items of a contract and the bids for it.

#include "scupper/bid/amounts.hpp"
#include "scupper/bid/award.hpp"
#include "scupper/bid/bid.hpp"
#include "scupper/bid/checking.hpp"
#include "scupper/bid/comparison.hpp"
#include "scupper/bid/crossover.hpp"
#include "scupper/bid/daily_cost.hpp"
#include "scupper/bid/item_draws.hpp"
#include "scupper/bid/item_list.hpp"
#include "scupper/bid/pay_item.hpp"
#include "scupper/bid/pay_items.hpp"
#include "scupper/bid/price_table.hpp"
#include "scupper/bid/read_form.hpp"
#include "scupper/bid/reversal.hpp"
#include "scupper/bid/unbalanced.hpp"
