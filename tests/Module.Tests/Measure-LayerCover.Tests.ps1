BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Measure-LayerCover' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'tells each part, front to back' {
        $parts = @($file | Measure-LayerCover)
        $parts.LayerPath | Should -Be 'Figure/Head/Eye L/Eye L', 'Figure/Head/Head', 'Figure/Body'
        foreach ($part in $parts) {
            $part.VisibleArea + $part.HiddenArea | Should -Be $part.Area
            $part.WantedDepth | Should -Be 1
            $part.MaximumDepth | Should -Be 64
        }
    }

    It 'tells each part with each neighbour' {
        $seams = @($file | Measure-LayerCover -By Neighbour)
        $seams.Count | Should -BeGreaterThan 0
        foreach ($seam in $seams) { $seam.NeighbourNumber | Should -BeLessThan $seam.LayerNumber }
        ($seams | Group-Object LayerPath).Name | Should -BeIn ($file | Measure-LayerCover).LayerPath
    }

    It 'measures the layers that are chosen, and lets all others cover them' {
        $all = @($file | Measure-LayerCover)
        $last = $all[-1]
        ($file | Measure-LayerCover -LiteralLayerPath $last.LayerPath | ConvertTo-Json) | Should -Be ($last | ConvertTo-Json)
        ($file | Get-Layer -LiteralLayerPath $last.LayerPath | Measure-LayerCover | ConvertTo-Json) | Should -Be ($last | ConvertTo-Json)
        ($file | Get-Layer | Measure-LayerCover | ConvertTo-Json) | Should -Be ($all | ConvertTo-Json)
    }

    It 'counts hidden parts only where that is asked' {
        $file | Set-Layer -Name * -Visible $false > $null
        $file | Measure-LayerCover -WarningVariable said -WarningAction SilentlyContinue | Should -BeNullOrEmpty
        $said | Should -BeLike '*IncludeHidden*'
        @($file | Measure-LayerCover -IncludeHidden).Count | Should -Be 4
    }

    It 'refuses depths that make no sense' {
        { $file | Measure-LayerCover -MaximumDepth 0 } | Should -Throw
        { $file | Measure-LayerCover -MaximumDepth 257 } | Should -Throw
        $file | Measure-LayerCover -MaximumDepth 8 -WantedDepth 9 -ErrorVariable bad -ErrorAction SilentlyContinue | Should -BeNullOrEmpty
        $bad | Should -BeLike '*wanted depth is 9 px*'
    }

    It 'shows a table of no more than 120 columns' {
        $text = $file | Measure-LayerCover | Out-String -Width 120
        $text | Should -Match 'Visible \(px²\)\s+Visible\s+Seam \(px\)\s+Opens \(px\)\s+Least \(px\)\s+Median \(px\)'
        $text | Should -Not -Match '0,0'
        $file | Measure-LayerCover -By Neighbour | Out-String -Width 120 | Should -Match 'Seam \(px\)\s+Opens \(px\)\s+Least \(px\)\s+Median \(px\)\s+Least at\s+Underneath'
    }

    It 'writes depths in few words' {
        [LayerTools.Views]::DescribeDepth($null, 64) | Should -Be '-'
        [LayerTools.Views]::DescribeDepth(0, 64) | Should -Be '0'
        [LayerTools.Views]::DescribeDepth(3.24, 64) | Should -Be '3.2'
        [LayerTools.Views]::DescribeDepth(64, 64) | Should -Be '64+'
    }

    It 'writes pictures of seams that would open, and refuses to overwrite them' {
        $folder = Join-Path $TestDrive 'seams'
        $open = @($file | Measure-LayerCover -By Neighbour -WantedDepth 6 | Where-Object ShallowLength -gt 0)
        $open.Count | Should -BeGreaterThan 0
        $file | Measure-LayerCover -WantedDepth 6 -Picture $folder -WhatIf | Should -BeNullOrEmpty
        $folder | Should -Not -Exist
        $pictures = @($file | Measure-LayerCover -WantedDepth 6 -Picture $folder)
        $pictures.Count | Should -Be $open.Count
        $pictures[0] | Should -BeOfType System.IO.FileInfo
        $pictures[0].DirectoryName | Should -Be (Join-Path $folder 'hero')
        $pictures[0].Name | Should -BeLike "$($open[0].LayerNumber) under $($open[0].NeighbourNumber) - *.png"
        $file | Measure-LayerCover -WantedDepth 6 -Picture $folder -ErrorVariable bad -ErrorAction SilentlyContinue | Should -BeNullOrEmpty
        $bad | Should -BeLike '*-Force*'
        @($file | Measure-LayerCover -WantedDepth 6 -Picture $folder -Force).Count | Should -Be $open.Count
    }
}
