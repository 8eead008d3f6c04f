<#import "../blocks/blocks.ftl" as block>
<#import "converter.ftl" as stage>
<@block.heading/>
<@block.mains/>
<@block.filter/>
<@block.bridge/>
<@block.bus/>
<@stage.converter/>
.end
