"""Pay items of a contract and the bids for it: read, checked, compared."""

from scupper._daily_cost import DailyCost, daily_cost
from scupper.bid_forms import ReadBids, read_bids
from scupper.bid_review import BidReview, estimate_accuracy, from_frames, read_ranges, review
from scupper.pay_items import PayItems, item_list, pay_items

__all__ = [
    "BidReview",
    "DailyCost",
    "PayItems",
    "ReadBids",
    "daily_cost",
    "estimate_accuracy",
    "from_frames",
    "item_list",
    "pay_items",
    "read_bids",
    "read_ranges",
    "review",
]
