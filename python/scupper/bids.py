"""Pay items of a contract and the bids for it."""

from scupper.bid_forms import ReadBids, read_bids
from scupper.pay_items import PayItems, item_list, pay_items

__all__ = ["PayItems", "ReadBids", "item_list", "pay_items", "read_bids"]
